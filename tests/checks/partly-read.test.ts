import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { allChecks } from '../../server/src/note/checks/all-checks.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { remarksOf } from '../../server/src/note/review.ts';

const sample = readFileSync(new URL('../../samples/sound/routine-right.opnote.yaml', import.meta.url), 'utf8');
const completeness = new Set(allChecks.filter(({ group }) => group === 'completeness').map(({ id }) => id));

test.each([
  ['a line that lost its indent', '  pupil: 7.0 mm', 'pupil: 7.0 mm'],
  ['a line that begins with a tab', '    axial-length:', '\t    axial-length:'],
  ['a line that lost one blank', '  pressure:', ' pressure:'],
])('%s is remarked on, and nothing behind it is called missing', (_what, from, to) => {
  expect(sample).toContain(`\n${from}`);
  const remarks = remarksOf(readNote(sample.replace(`\n${from}`, `\n${to}`)));
  expect(remarks.map(({ check }) => check)).toContain('text-not-readable');
  expect(remarks.filter(({ check }) => completeness.has(check))).toEqual([]);
});

test('what is missing is said again when all can be read', () => {
  const without = sample.replace(/\ncomplications: .*\n/u, '\n');
  expect(remarksOf(readNote(without)).map(({ check }) => check)).toContain('complications-not-recorded');
});
