import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { reviewNote } from '../../server/src/note/review.ts';

test('a complete note is read without a remark', () => {
  const text = readFileSync('samples/sound/long-eye-ring.opnote.yaml', 'utf8');
  const review = reviewNote(text);
  expect(review.remarks).toEqual([]);
  expect(review.reading.kind).toBe('operation');
  expect(JSON.parse(JSON.stringify(review))).toEqual(review);
});
