import { expect, test } from 'vitest';
import { codingFacts } from '../../server/src/note/codes/facts-of-note.ts';
import { suggestCodes } from '../../server/src/note/codes/suggest.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';

function suggested(lines: string) {
  const reading = readNote(`opnote: 1\nrecord: operation\nstatus: draft\neye: right\n${lines}`);
  if (reading.kind !== 'operation') throw new Error('not an operation');
  const { suggestions, notCoded } = suggestCodes(codingFacts(reading.note), 'icd10cm');
  return { codes: suggestions.map(({ code }) => code), without: notCoded.map(({ what, why }) => `${what}: ${why}`) };
}

// ICD-10-PCS: 08RJ3JZ replacement, 08DJ3ZZ extraction of the right lens (public table of the edition of 2023).
test.each([
  ['ECCE', 'placed: capsular bag', '08RJ3JZ'],
  ['ECCE', 'placed: none', '08DJ3ZZ'],
  ['MSICS', 'placed: sulcus', '08RJ3JZ'],
])('%s, with the lens recorded as “%s”', (procedure, placed, code) => {
  expect(suggested(`procedure: ${procedure}\nlens:\n  ${placed}\n`).codes).toContain(code);
});

test('a procedure whose name leaves the lens open suggests none of the two', () => {
  const { codes, without } = suggested('procedure: ECCE\n');
  expect(codes.filter((code) => code.startsWith('08'))).toEqual([]);
  expect(without).toContain(
    'lens extraction: the note does not say whether a lens was implanted, and the code depends on it',
  );
});

// ICD-10-CM: H25 is for age-related cataract; one from another disease of the eye is none (H26.2, from memory).
test('a cataract from another disease is not suggested as an age-related one', () => {
  const { codes, without } = suggested('diagnosis:\n  cataract: [complicated, nuclear]\n');
  expect(codes).toEqual([]);
  expect(without.join('\n')).toMatch(/complicated \(diagnosis\): the disease behind .* decides the code/u);
});
