import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Path } from '@sideport/schemas';
import { insertAll, insertValues } from '../../server/src/note/edits/insert-values.ts';
import type { Addition } from '../../server/src/note/edits/additions.ts';
import type { TreeNode } from '../../server/src/note/reading/tree.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { commentsIn, laidOut, saidIn, styles } from './layouts.ts';
import { apply } from './mark.ts';

const samples = new URL('../../samples/sound/', import.meta.url);
const notes = readdirSync(samples)
  .filter((file) => file.endsWith('.opnote.yaml'))
  .map((file) => readFileSync(new URL(file, samples), 'utf8'));
const fields = notes.flatMap((text) =>
  readNote(text)
    .values.map(({ field }) => ({ text, path: field.path, value: field.text }))
    .filter(
      ({ path, value }) =>
        typeof path.at(-1) === 'string' && path[0] !== 'record' && path[0] !== 'opnote' && !value.includes('\n'),
    ),
);

/** Of so many fields one is tried in a style; each style meets other ones. */
const STRIDE = 67;

function without(node: TreeNode, path: Path): TreeNode {
  const [step, ...rest] = path;
  if (node.kind === 'map')
    return {
      ...node,
      entries: node.entries.flatMap((entry) =>
        entry.key !== step
          ? [entry]
          : rest.length === 0 || entry.value === null
            ? []
            : [{ ...entry, value: without(entry.value, rest) }],
      ),
    };
  return node.kind === 'list'
    ? { ...node, items: node.items.map((item, at) => (at === step && item !== null ? without(item, rest) : item)) }
    : node;
}

function inserted(text: string, ...additions: readonly Addition[]): string {
  return apply(text, insertValues(readNote(text), additions));
}

const head = 'opnote: 1\nrecord: operation\n';
const eye: Addition = { path: ['eye'], value: 'left', as: 'value' };
const proposed = (path: Path, value: string, words: string): Addition => ({
  path,
  value,
  as: 'value',
  words,
  proposedFrom: 'dictation',
});

describe.each(Object.entries(styles))('%s', (_, style) => {
  const offset = Object.values(styles).indexOf(style);
  it('a field that was taken out is written again, and all else stays as it was', () => {
    const wrong: unknown[] = [];
    for (const [at, { text, path, value }] of fields.entries()) {
      if (at % STRIDE !== offset) continue;
      const { root } = readNote(text).tree;
      const thinned = laidOut(without(root!, path), style);
      for (const proposedFrom of [undefined, 'dictation'] as const) {
        const addition = { path, value, as: 'value', words: 'so it was said', ...(proposedFrom && { proposedFrom }) };
        const result = inserted(thinned, addition as Addition);
        // A mark at the end of a line speaks of what is last on it: elsewhere in braces there is no place for it.
        if (result === thinned && proposedFrom !== undefined && style.braces !== undefined) continue;
        const [before, after] = [saidIn(thinned), saidIn(result)];
        const expected = [...before.values, `${pathText(path)}=${value}`].toSorted();
        const same = JSON.stringify(after.values.toSorted()) === JSON.stringify(expected);
        const comments = commentsIn(result).map((comment) =>
          comment.replace(/^proposed from the dictation: “[^”]*”(?:; )?/u, ''),
        );
        const lost = commentsIn(thinned).filter((comment) => !comments.includes(comment));
        if (!same || after.faults.length > 0 || lost.length > 0)
          wrong.push({
            path: pathText(path),
            faults: after.faults,
            lost,
            result: same ? undefined : result.slice(0, 2000),
          });
      }
    }
    expect(wrong.slice(0, 3)).toEqual([]);
  });
});

function pathText(path: Path): string {
  return path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`),
    '',
  );
}

describe('a place is found', () => {
  it.each([
    ['in a text of comments without a line end', '# Theatre 2', '# Theatre 2\neye: left\n'],
    ['behind a document start', '---\n', '---\neye: left\n'],
    ['in an empty text', '', 'eye: left\n'],
    ['behind a byte order mark alone', '\uFEFF', '\uFEFFeye: left\n'],
    ['before the first field, behind a byte order mark', '\uFEFFlens: none\n', '\uFEFFeye: left\nlens: none\n'],
    ['above a field that a comment speaks of', '# confirm\nlens: none\n', 'eye: left\n# confirm\nlens: none\n'],
    ['below a heading', '# Theatre 2\nlens: none\n', '# Theatre 2\neye: left\nlens: none\n'],
    ['behind an empty field, before its comment', 'eye: # ask\n', 'eye: left # ask\n'],
    ['in braces behind an empty field', '{dye: }', '{dye: , eye: left }'],
    ['in empty braces', '{}', '{eye: left}'],
    [
      'below the comments of the section before',
      'patient:\n  ref: A\n  # as told\nlens: none\n',
      'patient:\n  ref: A\n  # as told\neye: left\nlens: none\n',
    ],
    [
      'above what is said of the section below',
      'patient:\n  ref: A\n# allow lens-entry-incomplete: asked\nlens: none\n',
      'patient:\n  ref: A\neye: left\n# allow lens-entry-incomplete: asked\nlens: none\n',
    ],
    [
      'behind the blank lines that a text keeps',
      'place: |+\n  Ward 2\n\n\nlens: none\n',
      'place: |+\n  Ward 2\n\n\neye: left\nlens: none\n',
    ],
  ])('%s', (_what, before, after) => {
    expect(inserted(before, eye)).toBe(after);
  });

  it.each([
    ['behind a document end', '---\n...\n'],
    ['behind a field with a mark of its own', '? opnote\n: 1\n'],
    ['behind a reference', 'eye: *other\n'],
    ['behind a forced type', 'eye: !!str\n'],
    ['behind a quote that is not closed', 'eye: "le\n'],
    ['in a text that is no note', 'Left eye, routine.\n'],
    ['in a list', '- a\n'],
  ])('nowhere %s', (_what, text) => {
    expect(insertValues(readNote(text), [eye])).toEqual([]);
  });

  it('for all or for none', () => {
    const text = `${head}lens: {udi: "1"}\n`;
    const model: Addition = { path: ['lens', 'model'], value: 'HX-1', as: 'identifier' };
    const nested: Addition = { path: ['team', 0, 'role'], value: 'surgeon', as: 'value' };
    expect(apply(text, insertAll(readNote(text), [model]))).toBe(`${head}lens: {udi: "1", model: HX-1}\n`);
    const below: Addition = { path: ['lens', 'model', 'deeper'], value: 'x', as: 'value' };
    expect(insertAll(readNote(text), [nested, below])).toEqual([]);
  });
});

describe('a list', () => {
  const excluded = (value: string) => proposed(['complications-excluded', 9], value, `no ${value}`);
  it.each([
    ['[iris prolapse]', '[iris prolapse, vitreous loss]'],
    ['[iris prolapse,]', '[iris prolapse, vitreous loss]'],
    ['[ iris prolapse , ]', '[ iris prolapse , vitreous loss ]'],
    ['[]', '[vitreous loss]'],
    ['[ ]', '[vitreous loss ]'],
    ['["iris [prolapse]"]', '["iris [prolapse]", vitreous loss]'],
  ])('%s in brackets goes on', (before, after) => {
    const text = `${head}complications-excluded: ${before}\n`;
    expect(inserted(text, excluded('vitreous loss'))).toBe(
      `${head}complications-excluded: ${after} # proposed from the dictation: “no vitreous loss”\n`,
    );
  });

  it('keeps the comments between its brackets', () => {
    const text = `${head}complications-excluded: [\n    iris prolapse, # seen to\n  ]\n`;
    expect(inserted(text, excluded('vitreous loss'))).toBe(
      `${head}complications-excluded: [\n    iris prolapse, # seen to\n   vitreous loss] # proposed from the dictation: “no vitreous loss”\n`,
    );
  });
});

describe('a mark beside a comment', () => {
  it('stands before what the comment said, which still counts', () => {
    const text = `${head}complications-excluded: [iris prolapse] # allow unusual-value: asked twice\n`;
    expect(inserted(text, proposed(['complications-excluded', 1], 'vitreous loss', 'no vitreous loss'))).toBe(
      `${head}complications-excluded: [iris prolapse, vitreous loss] # proposed from the dictation: “no vitreous loss”; allow unusual-value: asked twice\n`,
    );
  });

  it('is not put into a text', () => {
    const text = `${head}lens: {udi: "1", text: "in\n  two lines", placed: bag}\n`;
    expect(saidIn(inserted(text, proposed(['lens', 'model'], 'HX-1', 'HX one'))).values).toContain('lens.model=HX-1');
  });
});

describe('quotes', () => {
  it.each([
    ['0417', 'identifier', '"0417"'],
    ['417', 'identifier', '"417"'],
    ['1e5', 'identifier', '"1e5"'],
    ['no', 'identifier', '"no"'],
    ['no', 'value', 'no'],
    ['417', 'value', '417'],
    ['00:1 # 2', 'identifier', '"00:1 # 2"'],
    ['-3.0 D', 'value', '-3.0 D'],
    ['- 3', 'value', '"- 3"'],
    ['a\tb', 'value', String.raw`"a\tb"`],
    ['two\nlines', 'value', String.raw`"two\nlines"`],
    ['say "yes"', 'value', 'say "yes"'],
    [' blank', 'value', '" blank"'],
  ] as const)('%j as %s is written %s', (value, as, written) => {
    const text = inserted(head, { path: ['id'], value, as });
    expect(text).toBe(`${head}id: ${written}\n`);
    expect(saidIn(text).values).toContain(`id=${value.trim()}`);
  });

  it('are put where brackets would end the value, once', () => {
    const drug = { path: ['antisepsis', 'agent'], value: 'iodine: 5 %, rinsed', as: 'value' } as const;
    const text = inserted(`${head}antisepsis: {contact: 3 min}\n`, drug);
    expect(text).toBe(`${head}antisepsis: {contact: 3 min, agent: "iodine: 5 %, rinsed"}\n`);
  });
});
