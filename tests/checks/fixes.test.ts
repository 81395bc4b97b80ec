import { describe, expect, it } from 'vitest';
import { allAbouts } from '../../server/src/note/checks/all-abouts.ts';
import { runExample } from '../../server/src/note/checks/examples/run-example.ts';
import type { Edit, Fix } from '../../server/src/note/remark.ts';
import { reviewNote } from '../../server/src/note/review.ts';

const fixed = Object.entries(allAbouts).flatMap(([id, about]) => {
  const { faulty, noExample } = about();
  if (noExample !== undefined) return [];
  const { text, review } = runExample(faulty);
  return review.remarks.flatMap(({ fixes }) =>
    fixes.map((fix): [string, string, Fix, string] => [id, fix.title, fix, text]),
  );
});

/** Checks of side, identity and the lens: nobody's hand but the surgeon's puts them right. */
const NEVER_FIXED = Object.keys(allAbouts).filter((id) =>
  /eye|patient|lens|power|label|serial|consent|mirrored/u.test(id),
);

describe('every fix, applied to the example of its check', () => {
  it('there are some', () => {
    expect(new Set(fixed.map(([id]) => id)).size).toBeGreaterThan(15);
  });

  it.each(fixed)('%s: %s', (id, _title, fix, text) => {
    const mended = applied(text, fix.edits);
    expect(mended).not.toBe(text);
    const kind = text.startsWith('sideport:') || id.startsWith('department-') ? 'department' : undefined;
    const { remarks } = reviewNote(mended, {}, kind);
    expect(remarks.filter(({ check }) => check === id)).toEqual([]);
    if (fix.safety === 'safe') expect(remarks).toEqual([]);
  });
});

it('side, identity and the lens get no fix', () => {
  expect(fixed.filter(([id]) => NEVER_FIXED.includes(id)).map(([id]) => id)).toEqual([]);
});

function applied(text: string, edits: readonly Edit[]): string {
  return edits
    .toSorted((a, b) => b.span.start - a.span.start)
    .reduce(
      (result, { span, text: inserted }) => result.slice(0, span.start) + inserted + result.slice(span.end),
      text,
    );
}
