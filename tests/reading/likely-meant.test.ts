import { describe, expect, test } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';

const head = 'opnote: 1\nrecord: operation\nstatus: draft\n';

/** The remarks, and the text after the first fix of each. */
function mended(lines: string): { readonly checks: string[]; readonly text: string } {
  const text = head + lines;
  const { remarks } = readNote(text);
  const edits = remarks.flatMap(({ fixes }) => fixes[0]?.edits ?? []).toSorted((a, b) => b.span.start - a.span.start);
  let after = text;
  for (const { span, text: put } of edits) after = after.slice(0, span.start) + put + after.slice(span.end);
  return { checks: remarks.map(({ check }) => check), text: after.slice(head.length) };
}

describe('a value of the wrong shape is mended to what was meant', () => {
  test.each([
    ['anaesthesia:\n  kinds: topical, intracameral\n', 'anaesthesia:\n  kinds: [topical, intracameral]\n'],
    ['anaesthesia:\n  kinds: topical and intracameral\n', 'anaesthesia:\n  kinds: [topical, intracameral]\n'],
    ['ring: none\n', 'ring:\n  used: no\n'],
    [
      'plan:\n    lens:\n        power: 5\nring: not used # quiet bag\n',
      'plan:\n    lens:\n        power: 5\nring:\n  used: no # quiet bag\n',
    ],
    ['lens:\n  serial: “0040719101”\n', 'lens:\n  serial: "0040719101"\n'],
    [
      'preop:\n  counselling:\n    - late dislocation: second operation\n    - infection\n',
      'preop:\n  counselling:\n    - "late dislocation: second operation"\n    - infection\n',
    ],
    ['specimens: [vitreous: for "culture", capsule]\n', `specimens: ['vitreous: for "culture"', capsule]\n`],
    ['findings:\n  zonule: lax temporally\n', 'findings:\n  "zonule: lax temporally"\n'],
  ])('%s', (written, wanted) => {
    const { checks, text } = mended(written);
    expect(checks).toHaveLength(1);
    expect(text).toBe(wanted);
    expect(readNote(head + text).remarks).toEqual([]);
  });

  test('a word that no list knows is no enumeration', () => {
    expect(mended('anaesthesia:\n  kinds: topical, magic\n').checks).toEqual(['unknown-word']);
  });

  test('prose keeps its quotation marks', () => {
    expect(mended('findings: “a quiet eye”\n').checks).toEqual([]);
  });
});

describe('a value that begins with a sign for a text of several lines', () => {
  test.each([
    ['antisepsis:\n  contact: >3 min\n  strength: 5 %\n', '>3 min'],
    ['preop:\n  pressure: >21 mmHg # at noon\n  pupil: 7 mm\n', '>21 mmHg'],
    ['antisepsis:\n  contact: >3\n  strength: 5 %\n', '>3'],
    ['preop:\n  counselling:\n    - >50 % risk\n    - infection\n', '>50 % risk'],
  ])('%s', (written, value) => {
    const { remarks } = readNote(head + written);
    expect(remarks.map(({ message }) => message)).toEqual([
      `“>” at the beginning of a value begins a text of several lines. Write the value without it, or put it in double quotes: "${value}".`,
    ]);
  });

  test('a text of several lines is one', () => {
    expect(mended('findings: >\n  a quiet\n  eye\nfree-text: |-\n  > 3 min\n').checks).toEqual([]);
  });
});

describe('the kind of record', () => {
  const operation = 'team:\n  - role: surgeon\n    ref: S-02\nring:\n  used: no\ncapsulotomy:\n  diameter: 5.1 mm\n';

  test('the fields of another kind say that the word is wrong, once', () => {
    const reading = readNote(`opnote: 1\nrecord: follow-up\nstatus: draft\n${operation}`);
    expect(reading.remarks.map(({ check }) => check)).toEqual(['record-kind-disagrees']);
    expect(reading.kind).toBe('operation');
  });

  test('one or two misplaced fields are just misplaced', () => {
    const reading = readNote('opnote: 1\nrecord: follow-up\noperation: OP-1\nvisit: day 1\nseat: temporal\n');
    expect(reading.kind).toBe('follow-up');
    expect(reading.remarks.map(({ message }) => message)).toEqual([
      '“seat” is no field of this record. It is a field of an operation.',
    ]);
  });
});

test('a term that says more than what was written is named, not taken for it', () => {
  const { remarks } = readNote(`${head}complications:\n  - what: macular oedema\n`);
  expect(remarks.map(({ message }) => message)).toEqual([
    expect.stringMatching(/not a known complication\. Expected one of .* in common: cystoid macular oedema, /u),
  ]);
});
