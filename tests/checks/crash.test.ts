import { expect, it } from 'vitest';
import { runExample } from '../../server/src/note/checks/examples/run-example.ts';
import { operationCheck } from '../../server/src/note/checks/check.ts';
import { checkById } from '../../server/src/note/checks/known-checks.ts';
import { reviewReading } from '../../server/src/note/review.ts';

const about = checkById('unknown-field');

it('note-not-fully-checked: a check that fails is said, without a word of the note', () => {
  if (about === undefined) throw new Error('unknown-field is missing');
  const failing = operationCheck({
    ...about,
    run: (note) => {
      throw new Error(`fails on ${note.patient?.ref?.value}`);
    },
  });
  const { review } = runExample({ note: '' });
  const { remarks } = reviewReading(review.reading, {}, [failing]);
  expect(remarks.map(({ check }) => check)).toEqual(['note-not-fully-checked']);
  expect(remarks[0]?.message).toContain('unknown-field');
  expect(remarks[0]?.message).not.toContain('P-1042');
});
