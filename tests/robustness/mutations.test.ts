import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Edit } from '../../server/src/note/remark.ts';
import { reviewNote } from '../../server/src/note/review.ts';
import { mutate, seeded } from './mutate.ts';

const samples = ['samples/sound', 'samples/faulty'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.opnote.yaml'))
    .map((name) => readFileSync(`${folder}/${name}`, 'utf8')),
);
const today = '2031-12-31';

/** The text after edits; the last one first, so that offsets stay right. */
function applied(text: string, edits: readonly Edit[]): string {
  return edits
    .toSorted((a, b) => b.span.start - a.span.start)
    .reduce((after, { span, text: put }) => after.slice(0, span.start) + put + after.slice(span.end), text);
}

/** What is wrong with the review of a text, in words; empty when nothing is. */
function broken(text: string): string[] {
  const review = reviewNote(text, { today });
  const outside = [...review.remarks, ...review.computed.values].filter(
    ({ span }) => !(span.start >= 0 && span.start < span.end && span.end <= text.length),
  );
  const crashed = review.remarks.filter(({ check }) => check === 'note-not-fully-checked');
  return [...outside, ...crashed].map((what) => JSON.stringify(what).slice(0, 300));
}

describe('10,000 seeded mutations of the samples', () => {
  test.each(Array.from({ length: 10 }, (_, batch) => [batch]))(
    'batch %i: nothing throws, no check crashes, every span is inside the text and not empty',
    (batch) => {
      const random = seeded(4170 + batch);
      for (let i = 0; i < 1000; i++) {
        const text = mutate(samples[(batch + i) % samples.length] ?? '', random);
        if (text === '') continue;
        const faults = broken(text);
        if (faults.length > 0) expect({ text, faults }).toEqual({ text, faults: [] });
      }
    },
    120_000,
  );

  test('the same text gets the same answer twice', () => {
    const random = seeded(97);
    for (let i = 0; i < 150; i++) {
      const text = mutate(samples[i % samples.length] ?? '', random);
      const first = JSON.stringify(reviewNote(text, { today }));
      if (first !== JSON.stringify(reviewNote(text, { today }))) expect(text).toBe('answered the same twice');
    }
  }, 120_000);

  test('a safe fix takes its remark away and leaves a note that is read as well as before', () => {
    const random = seeded(31);
    let fixed = 0;
    for (let i = 0; i < 900; i++) {
      const text = mutate(samples[i % samples.length] ?? '', random);
      const before = reviewNote(text, { today });
      for (const remark of before.remarks) {
        const fix = remark.fixes.find(({ safety }) => safety === 'safe');
        if (fix === undefined) continue;
        fixed++;
        const after = reviewNote(applied(text, fix.edits), { today });
        const same = (checks: typeof after.remarks) => checks.filter(({ check }) => check === remark.check).length;
        const unreadable = (checks: typeof after.remarks) =>
          checks.filter(({ check }) => check === 'text-not-readable').length;
        if (same(after.remarks) >= same(before.remarks) || unreadable(after.remarks) > unreadable(before.remarks)) {
          expect({ text, fix, remark: remark.message }).toBe('mended');
        }
      }
    }
    expect(fixed).toBeGreaterThan(20);
  }, 120_000);
});
