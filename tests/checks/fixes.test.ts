import { describe, expect, it } from 'vitest';
import { allAbouts } from '../../server/src/note/checks/all-abouts.ts';
import { baseOperation } from '../../server/src/note/checks/examples/base-operation.ts';
import { composeNote } from '../../server/src/note/checks/examples/compose.ts';
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

const remarked = Object.values(allAbouts).flatMap((about) => {
  const { faulty, noExample } = about();
  return noExample === undefined ? runExample(faulty).review.remarks.filter(({ fixes }) => fixes.length > 0) : [];
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

/** The places that say which eye and which lens. */
const EYE_OR_LENS = /^(?:lens|plan\.lens|plan\.spare-lens|safety\.lens-verified)(?:\.|$)|(?:^|\.)(?:which-)?eye$/u;

it.each([
  ['lens:\n  power: +21,5 D', 'lens.power', ['needs-review']],
  ['lens:\n  power: +1,250 D', 'lens.power', []],
  ['plan:\n  lens:\n    power: 21,5 D', 'plan.lens.power', ['needs-review']],
  ['plan:\n  spare-lens:\n    power: 21,5 D', 'plan.spare-lens.power', ['needs-review']],
  ['safety:\n  lens-verified:\n    power: 21,5 D', 'safety.lens-verified.power', ['needs-review']],
  ['lens:\n  serial: 0040719', 'lens.serial', ['needs-review']],
  ['lens:\n  pieces: "1"', 'lens.pieces', ['needs-review']],
  ['eye: rigth', 'eye', []],
  ['capsulotomy:\n  diameter: 5,2 mm', 'capsulotomy.diameter', ['safe']],
])('of %j, which is the reader’s to remark on, no fix is safe where it says which lens', (lines, at, expected) => {
  const { remarks } = reviewNote(composeNote(baseOperation, lines));
  const found = remarks.filter(({ path }) => path.join('.') === at);
  expect(found.length).toBeGreaterThan(0);
  expect(found.flatMap(({ fixes }) => fixes.map(({ safety }) => safety))).toEqual(expected);
});

it('no fix of any check is safe where a note says which eye or lens', () => {
  expect(remarked.length).toBeGreaterThan(15);
  const safe = remarked.filter(({ fixes }) => fixes.some(({ safety }) => safety === 'safe'));
  expect(
    safe.filter(({ path }) => EYE_OR_LENS.test(path.filter((step) => typeof step === 'string').join('.'))),
  ).toEqual([]);
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
