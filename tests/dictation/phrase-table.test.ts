import { planAt, recordPlan } from '@sideport/schemas';
import { groups } from '@sideport/schemas/spoken/groups.ts';
import { describe, expect, it } from 'vitest';
import { readPattern, type PatternTree } from '../../server/src/note/dictation/pattern.ts';
import { foldWord } from '../../server/src/note/dictation/spelling.ts';
import { table } from '../../server/src/note/dictation/table.ts';

const { sections } = table();
const fields = sections.flatMap((section) => section.fields);
const subjects = sections.flatMap((section) => section.subjects);
const operation = recordPlan('operation');

const patterns = [
  ...subjects.flatMap(({ named, heard }) => [...(named ?? []), ...(heard ?? [])]),
  ...fields.flatMap(({ called, calledHeard, values, forms }) => [
    ...(called ?? []),
    ...(calledHeard ?? []),
    ...(values ?? []).flatMap(({ said, heard }) => [...said, ...(heard ?? [])]),
    ...(forms ?? []).flatMap(({ said, heard }) => [...said, ...(heard ?? [])]),
  ]),
];

function wordsOf(tree: PatternTree): readonly string[] {
  if (tree.kind === 'word') return [tree.word];
  return tree.kind === 'slot' ? [] : tree.parts.flatMap(wordsOf);
}

/** A path of the table without the names of its entries. */
function keysOf(path: string): readonly string[] {
  return path.replace(/\[[^\]]*\]/gu, '').split('.');
}

describe('the phrase table', () => {
  it('holds patterns that are well formed, in words as the tokeniser folds them', () => {
    expect(patterns.length).toBeGreaterThan(1000);
    for (const pattern of patterns) {
      for (const word of wordsOf(readPattern(pattern)))
        if (/^\p{L}/u.test(word)) expect(foldWord(word), pattern).toBe(word);
    }
    expect(Object.keys(groups).length).toBeGreaterThan(0);
  });

  it('names fields that the note has', () => {
    for (const { path } of fields) expect(planAt(operation, keysOf(path)), path).toBeDefined();
  });

  it('gives values that their fields understand', () => {
    const bad = fields.flatMap(({ path, values, counts }) =>
      counts === true
        ? []
        : (values ?? []).flatMap(({ value, denied, deniedAs, as, also, denies }) => [
            ...(as === undefined && denies !== true && !/^(?:none|not done)$/u.test(value)
              ? misunderstood(path, value)
              : []),
            ...(denied !== undefined && denied !== 'none' ? misunderstood(path, denied) : []),
            ...[as, deniedAs, ...(also ?? [])].flatMap((pair) => (pair === undefined ? [] : misunderstood(...pair))),
          ]),
    );
    expect(bad).toEqual([]);
  });

  it('knows every subject that its fields are about', () => {
    const known = new Set(subjects.map(({ id }) => id));
    for (const { path, about, opens } of fields)
      for (const subject of [...about, ...(opens === undefined ? [] : [opens])])
        expect(known.has(subject), `${path}: ${subject}`).toBe(true);
  });

  it('says in each entry what the note understands', () => {
    const bad = Object.entries(table().entries).flatMap(([entry, base]) =>
      Object.entries(base).flatMap(([key, value]) => misunderstood(`${entry}.${key}`, value)),
    );
    expect(bad).toEqual([]);
  });
});

/** What a field does not understand: undefined, or a sentence. A word that says why there is nothing counts where the field takes it. */
function misunderstood(path: string, value: string): readonly string[] {
  const plan = planAt(operation, keysOf(path));
  const leaf = plan?.kind === 'list' ? plan.item : plan;
  const says: readonly string[] = plan?.guide.says ?? [];
  const reads = leaf?.kind === 'value' && leaf.notation.read(value).ok;
  return says.includes(value) || reads ? [] : [`${path}: ${value}`];
}
