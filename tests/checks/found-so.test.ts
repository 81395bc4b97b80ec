import { expect, test } from 'vitest';
import { composeNote } from '../../server/src/note/checks/examples/compose.ts';
import { baseOperation } from '../../server/src/note/checks/examples/base-operation.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { remarksOf } from '../../server/src/note/review.ts';

const torn = (lines: string): boolean =>
  remarksOf(readNote(composeNote(baseOperation, `capsule-state:\n  posterior: torn${lines}`))).some(
    ({ check }) => check === 'torn-but-no-complication',
  );

test('a capsule that an earlier operation left torn is no complication of this one, where the note says so', () => {
  expect(torn('')).toBe(true);
  expect(torn('\n  text: as the first operation left it\nprocedure: secondary lens')).toBe(false);
  // The same words after a first operation, and no words after a second one, leave the question open.
  expect(torn('\n  text: as the first operation left it')).toBe(true);
  expect(torn('\nprocedure: secondary lens')).toBe(true);
});
