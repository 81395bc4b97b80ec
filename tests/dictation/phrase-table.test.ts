import { planAt, recordPlan } from '@sideport/schemas';
import { groups } from '@sideport/schemas/spoken/groups.ts';
import { describe, expect, it } from 'vitest';
import { readPattern, type PatternTree } from '../../server/src/note/dictation/pattern.ts';
import { foldWord } from '../../server/src/note/dictation/spelling.ts';
import { spokenSections, table } from '../../server/src/note/dictation/table.ts';

const fields = spokenSections.flatMap((section) => section.fields);
const subjects = spokenSections.flatMap((section) => section.subjects);
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
    for (const { path, values, counts } of fields) {
      if (counts === true) continue;
      for (const { value, denied, deniedAs, as, also, denies } of values ?? []) {
        if (as === undefined && denies !== true && !/^(?:none|not done)$/u.test(value)) understood(path, value);
        if (denied !== undefined && denied !== 'none') understood(path, denied);
        for (const [other, text] of [as, deniedAs, ...(also ?? [])].filter((pair) => pair !== undefined))
          understood(other, text);
      }
    }
  });

  it('knows every subject that its fields are about', () => {
    const known = new Set(subjects.map(({ id }) => id));
    for (const { path, about, opens } of fields)
      for (const subject of [...about, ...(opens === undefined ? [] : [opens])])
        expect(known.has(subject), `${path}: ${subject}`).toBe(true);
  });

  it('says in each entry what the note understands', () => {
    for (const [entry, base] of Object.entries(table().entries))
      for (const [key, value] of Object.entries(base)) understood(`${entry}.${key}`, value);
  });
});

/** A word that says why there is nothing counts where the field takes it. */
function understood(path: string, value: string): void {
  const plan = planAt(operation, keysOf(path));
  const leaf = plan?.kind === 'list' ? plan.item : plan;
  const says: readonly string[] = plan?.guide.says ?? [];
  const reads = leaf?.kind === 'value' && leaf.notation.read(value).ok;
  expect(says.includes(value) || reads, `${path}: ${value}`).toBe(true);
}
