import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { remarksOf } from '../../server/src/note/review.ts';

const sample = readFileSync(new URL('../../samples/sound/routine-right.opnote.yaml', import.meta.url), 'utf8');
const FINDINGS = /^findings:.*(?:\n {2}.*)*$/mu;
const told = (findings: string): readonly string[] =>
  remarksOf(readNote(sample.replace(FINDINGS, `findings: ${findings}`)))
    .map(({ check }) => check)
    .filter((check) => check.startsWith('prose-'));

test.each([
  'Trypan blue was opened but not used.',
  'Trypan blue was not needed.',
  'The anterior vitrectomy set was not opened.',
  'Posterior capsule rupture did not occur.',
])('what is denied behind its name is not told: %s', (findings) => {
  expect(sample).toMatch(FINDINGS);
  expect(told(findings)).toEqual([]);
});

test.each(['Trypan blue was used.', 'Posterior capsule rupture was seen, the vitreous did not come forward.'])(
  'what is told is told: %s',
  (findings) => {
    expect(told(findings)).toHaveLength(1);
  },
);
