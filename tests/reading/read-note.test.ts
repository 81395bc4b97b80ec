import { describe, expect, test } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';

const head = 'opnote: 1\nrecord: operation\nstatus: draft\n';

/** Each remark as “marked text: check”. */
function remarks(text: string): string[] {
  return readNote(text).remarks.map(({ check, span }) => `${text.slice(span.start, span.end)}: ${check}`);
}

describe('one slip hides nothing about the rest', () => {
  test('a half-typed field does not swallow the section below it', () => {
    const text = `${head}eye: left\nincis\nlens:\n  power: +5.5 D\n  colour: blue\n`;
    expect(remarks(text)).toEqual(['incis: text-not-readable', 'colour: unknown-field']);
    const reading = readNote(text);
    expect(reading.kind === 'operation' && reading.note.lens?.power?.value.amount).toBe(5.5);
  });

  test('a value that holds “: ” is marked, and the fields behind it are read', () => {
    const text = `${head}indication: glare: cannot drive\neye: right\n`;
    expect(remarks(text)).toEqual(['glare: cannot drive: text-not-readable']);
    const reading = readNote(text);
    expect(reading.kind === 'operation' && reading.note.eye?.value).toBe('right');
  });

  test('an open quote does not swallow the rest', () => {
    const text = `${head}findings: "deep chamber\neye: right\n`;
    expect(remarks(text)).toEqual(['"deep chamber: text-not-readable']);
    const reading = readNote(text);
    expect(reading.kind === 'operation' && reading.note.eye?.value).toBe('right');
  });

  test('a fault in a section hides no fault in its neighbour', () => {
    const text = `${head}eye: rihgt\nlens:\n  power: lots\n  axis: 30 mm\ncapsulotomy:\n  diameter: 5,1 mm\n`;
    expect(remarks(text)).toEqual([
      'rihgt: unknown-word',
      'lots: unreadable-value',
      '30 mm: wrong-unit',
      '5,1 mm: decimal-comma',
    ]);
  });
});

describe('refused ways of writing', () => {
  test.each([
    ['findings: &x deep\n', '&x: anchor-refused'],
    ['findings: *x\n', '*x: alias-refused'],
    ['dye: !!str trypan blue\n', '!!str: tag-refused'],
    ['eye: right\neye: left\n', 'eye: field-given-twice'],
    ['hydrodissection:\n  <<: {cortex: yes}\n', '<<: merge-key-refused'],
    ['eye: right\n---\neye: left\n', '---: several-documents'],
  ])('%j', (text, expected) => {
    expect(remarks(head + text)).toContain(expected);
  });

  test('an unresolved alias is remarked and nothing throws', () => {
    expect(remarks(`${head}lens: *nowhere\n`)).toEqual(['*nowhere: alias-refused']);
  });
});

describe('what other readers would change', () => {
  test.each(['007', '0123', '0x1F', '1e3'])('%s is kept as typed and remarked', (typed) => {
    const text = `${head}lens:\n  serial: ${typed}\n`;
    const reading = readNote(text);
    expect(reading.kind === 'operation' && reading.note.lens?.serial?.value).toBe(typed);
    expect(remarks(text)).toEqual([`${typed}: identifier-without-quotes`]);
  });

  test('a text cut off by “ #” is remarked', () => {
    expect(remarks(`${head}findings: right eye # temporal\n`)).toEqual(['right eye: text-cut-by-hash']);
  });
});

describe('none, not done and not recorded are kept apart', () => {
  test('each is a word of its own under said', () => {
    const reading = readNote(`${head}complications: none\nvitrectomy: not done\nfindings: not recorded\n`);
    expect(reading.remarks).toEqual([]);
    const said = reading.kind === 'operation' ? reading.note.$.said : {};
    expect(Object.entries(said).map(([key, { word }]) => `${key} ${word}`)).toEqual([
      'complications none',
      'vitrectomy not done',
      'findings not recorded',
    ]);
  });

  test('a missing list is neither an empty one nor none', () => {
    const reading = readNote(head);
    expect(reading.kind === 'operation' && reading.note.complications).toBeUndefined();
    expect(reading.kind === 'operation' && reading.note.$.said['complications']).toBeUndefined();
  });
});

describe('offsets', () => {
  test.each([
    ['LF', (text: string) => text],
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['BOM', (text: string) => `\uFEFF${text}`],
  ])('are right with %s and emoji', (_, change) => {
    const text = change(`${head}findings: "😀 deep 👁️ chamber"\neye: rihgt # 😀\n`);
    expect(remarks(text)).toEqual(['rihgt: unknown-word']);
  });
});

test('the empty text is an empty draft without remarks', () => {
  expect(readNote('')).toMatchObject({ kind: null, remarks: [] });
});

test('a side word never gets a fix', () => {
  expect(readNote(`${head}eye: rihgt\n`).remarks[0]?.fixes).toEqual([]);
});
