import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { folds } from '../../server/src/note/editing/folds.ts';
import { mentionsIn } from '../../server/src/note/editing/mentions.ts';
import { outline, type OutlineEntry } from '../../server/src/note/editing/outline.ts';
import { selectionsAt } from '../../server/src/note/editing/selections.ts';
import { pathAt } from '../../server/src/note/editing/spots.ts';
import { tokens } from '../../server/src/note/editing/tokens.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { atCursor } from './mark.ts';

const sample = readFileSync(new URL('../../samples/sound/long-eye-ring.opnote.yaml', import.meta.url), 'utf8');
const reading = readNote(sample);

describe('the outline', () => {
  it('names a field that has no name', () => {
    const names = (text: string) => outline(readNote(text)).map(({ name }) => name);
    expect(names('opnote: 1\nrecord: operation\n: left\n')).toEqual(['opnote', 'record', '(no name)']);
    expect(names('opnote: 1\n"": left\n')).toEqual(['opnote', '(no name)']);
  });

  it('has every section and entry, each head within its entry', () => {
    const walk = (entries: readonly OutlineEntry[]) => {
      for (const { span, head, children } of entries) {
        expect(span.start <= head.start && head.end <= span.end && head.start < head.end).toBe(true);
        walk(children);
      }
    };
    walk(outline(reading));
    const nucleus = outline(reading).find(({ name }) => name === 'nucleus');
    expect(nucleus?.children[1]?.children.map(({ name, detail }) => [name, detail])).toEqual([
      ['1', 'sculpt'],
      ['2', 'quadrant removal'],
    ]);
  });
});

describe('folding', () => {
  it('begins at each section and ends before the blank line below it', () => {
    const { reading: small } = atCursor('# one\n# two\n‸opnote: 1\npatient:\n  ref: P-1\n\neye: left\n').around;
    expect(folds(small).map(({ span, kind }) => [small.text.slice(span.start, span.end), kind])).toEqual([
      ['patient:\n  ref: P-1', 'section'],
      ['# one\n# two', 'comment'],
    ]);
  });
});

describe('a selection', () => {
  it('grows from the value to the field, the entry, the list and the note', () => {
    const { around, offset } = atCursor('opnote: 1\nincisions:\n  - kind: main\n    at: temp‸oral\n');
    const texts = selectionsAt(around.reading, offset).map(({ start, end }) =>
      around.reading.text.slice(start, end).trim(),
    );
    expect(texts).toEqual([
      'temporal',
      'at: temporal',
      'kind: main\n    at: temporal',
      '- kind: main\n    at: temporal',
      'incisions:\n  - kind: main\n    at: temporal',
      'opnote: 1\nincisions:\n  - kind: main\n    at: temporal',
    ]);
  });
});

describe('the colours', () => {
  it('tell side, quantity, term, absence and allowance apart', () => {
    const text =
      'opnote: 1\nrecord: operation\neye: left\ndye: none\n# allow unusual-value: measured twice\npreop:\n  pupil: 2 mm # confirm\n';
    const found = tokens(readNote(text))
      .filter(({ kind }) => kind !== 'field')
      .map(({ span, kind }) => [text.slice(span.start, span.end), kind]);
    expect(found).toEqual([
      ['1', 'term'],
      ['operation', 'term'],
      ['left', 'side'],
      ['none', 'absence'],
      ['allow unusual-value', 'allowance'],
      ['2 mm', 'quantity'],
      ['confirm', 'mark'],
    ]);
  });

  it('never overlap and never cross a line', () => {
    let end = 0;
    for (const { span } of tokens(reading)) {
      expect(span.start).toBeGreaterThanOrEqual(end);
      expect(sample.slice(span.start, span.end)).not.toContain('\n');
      end = span.end;
    }
  });
});

describe('names', () => {
  it('are found wherever a note, a lens, a patient or a member of staff is named', () => {
    const counts = new Map<string, number>();
    for (const { thing, name } of mentionsIn(reading))
      counts.set(`${thing} ${name}`, (counts.get(`${thing} ${name}`) ?? 0) + 1);
    expect(Object.fromEntries(counts)).toMatchObject({
      'note OP-2025-0417': 1,
      'patient P-3107': 1,
      'lens HX-1': 3,
      'lens HT-3': 1,
      'staff N-11': 4,
    });
  });
});

describe('the place at the cursor', () => {
  it.each([
    ['opnote: 1\nincisions:\n  - kind: main\n    at: temp‸oral\n', 'incisions.0.at'],
    ['opnote: 1\nincisions:\n  - kind: main\n    ‸\n', 'incisions.0'],
    ['opnote: 1\ncapsul‸otomy:\n  diameter: 5 mm\n', 'capsulotomy'],
    ['‸', ''],
  ])('of %j is %s', (marked, path) => {
    const { around, offset } = atCursor(marked);
    expect(pathAt(around.reading.tree, around.reading.kind, offset).join('.')).toBe(path);
  });
});
