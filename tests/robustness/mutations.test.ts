import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { reviewNote, type Review } from '../../server/src/note/review.ts';
import type { Edit, Fix } from '../../server/src/note/remark.ts';
import { mutate, seeded } from './mutate.ts';

const MUTATIONS = 10_000;
const PARTS = 10;
/** Longer than any of these notes takes on the slowest machine: what takes this long does not end. */
const HANGS = 300_000;

const notes = ['samples/sound', 'samples/faulty'].flatMap((folder) =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.opnote.yaml'))
    .map((file) => readFileSync(`${folder}/${file}`, 'utf8')),
);
const department = readNote(readFileSync('samples/sound/sideport.yaml', 'utf8'), 'department');
const surroundings = {
  department: department.kind === 'department' ? department.note : null,
  today: '2026-03-20',
  file: 'note.opnote.yaml',
};

/** What is wrong with a review, in words; empty when nothing is. */
function faultsOf(text: string, review: Review): string[] {
  const places = review.remarks.flatMap((remark) => [remark, ...remark.related.filter((at) => at.file === undefined)]);
  const outside = [...places, ...review.computed.values].filter(({ span }) => !isInside(text, span));
  const crashed = review.remarks.filter(({ check }) => check === 'note-not-fully-checked');
  return [
    ...outside.map(({ span }) => `a place from ${span.start} to ${span.end} of ${text.length}`),
    ...crashed.map(({ message }) => message),
    ...review.remarks.flatMap((remark) => remark.fixes.flatMap(({ edits }) => faultsOfEdits(text, edits))),
    ...review.remarks.flatMap(({ fixes }) => fixes.flatMap((fix) => faultsAfterFix(review, fix))),
    ...review.remarks.flatMap(({ path, fixes }) =>
      fixes.some(({ safety }) => safety === 'safe') && saysEyeOrLens(path) ? [`a safe fix of ${path.join('.')}`] : [],
    ),
  ];
}

function saysEyeOrLens(path: readonly (string | number)[]): boolean {
  return /^(?:plan\.|safety\.)?(?:lens|spare-lens|lens-verified)(?:\.|$)|\beye$/u.test(path.join('.'));
}

function isInside(text: string, { start, end }: { readonly start: number; readonly end: number }): boolean {
  return start >= 0 && start < end && end <= text.length;
}

function faultsOfEdits(text: string, edits: readonly Edit[]): string[] {
  return edits.filter(({ span }) => span.start > span.end || span.end > text.length).map(() => 'an edit outside');
}

/** A fix leaves a readable note readable, with all that was read; a safe one makes no other note worse either. */
function faultsAfterFix(review: Review, { safety, edits }: Fix): string[] {
  const { text, tree } = review.reading;
  if (tree.faults.length > 0 && safety !== 'safe') return [];
  const fixed = edits
    .toSorted((a, b) => b.span.start - a.span.start)
    .reduce((before, { span, text: put }) => before.slice(0, span.start) + put + before.slice(span.end), text);
  const after = readNote(fixed);
  const isWhole = tree.faults.length > 0 || after.values.length >= review.reading.values.length;
  if (after.tree.faults.length <= tree.faults.length && isWhole) return [];
  return [`a fix breaks the note: ${JSON.stringify(edits)}`];
}

describe(`${MUTATIONS} damaged samples`, () => {
  test.each(Array.from({ length: PARTS }, (_, part) => part))(
    'part %i: no throw, no hang, every place inside the text, the same answer twice, fixes leave a readable note',
    (part) => {
      const random = seeded(41 + part);
      const faults: string[] = [];
      for (let i = 0; i < MUTATIONS / PARTS; i++) {
        const text = mutate(notes[i % notes.length] ?? '', random);
        const review = reviewNote(text, surroundings);
        faults.push(...faultsOf(text, review).map((fault) => `note ${i}: ${fault}`));
        if (i % 5 === 0 && JSON.stringify(reviewNote(text, surroundings)) !== JSON.stringify(review)) {
          faults.push(`note ${i}: another answer the second time`);
        }
      }
      expect(faults).toEqual([]);
    },
    HANGS,
  );

  test('the damage is real: most of it is remarked on', () => {
    const random = seeded(7);
    const sound = notes[0] ?? '';
    const silent = Array.from({ length: 200 }, () => mutate(sound, random)).filter(
      (text) => reviewNote(text, surroundings).remarks.length === 0,
    );
    expect(silent.length).toBeLessThan(100);
  });
});
