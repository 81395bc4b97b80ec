import { readdirSync, readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { allChecks } from '../../server/src/note/checks/all-checks.ts';
import { reviewNote } from '../../server/src/note/review.ts';

const notes = ['samples/sound', 'samples/faulty'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.opnote.yaml'))
    .map((name) => [`${folder}/${name}`] as const),
);

test.each(notes)('architecture invariant: what the core says of %s is plain and survives JSON', (file) => {
  const review = reviewNote(readFileSync(file, 'utf8'));
  expect(JSON.parse(JSON.stringify(review))).toStrictEqual(review);
});

test.each(notes)('architecture invariant: every span in %s is inside the text and not empty', (file) => {
  const text = readFileSync(file, 'utf8');
  const { remarks, computed } = reviewNote(text);
  // A related place of another file is a place in that file's text.
  const related = remarks.flatMap((remark) => remark.related.filter(({ file }) => file === undefined));
  for (const { span } of [...remarks, ...related, ...computed.values]) {
    expect(span.start).toBeGreaterThanOrEqual(0);
    expect(span.end).toBeGreaterThan(span.start);
    expect(span.end).toBeLessThanOrEqual(text.length);
  }
});

test('architecture invariant: a check that crashes shows as a remark, and says nothing of the note', () => {
  const text = readFileSync('samples/sound/long-eye-ring.opnote.yaml', 'utf8');
  const first = allChecks[0];
  expect(first).toBeDefined();
  if (first === undefined) return;
  const crash = vi.spyOn(first, 'run').mockImplementation(() => {
    throw new Error('P-3107 0040719052');
  });
  const { remarks } = reviewNote(text);
  crash.mockRestore();
  expect(remarks).toHaveLength(1);
  expect(remarks[0]).toMatchObject({ check: 'note-not-fully-checked', severity: 'error' });
  expect(remarks[0]?.message).not.toContain('P-3107');
});
