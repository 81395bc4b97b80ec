import { wordShares } from './case-mix.ts';
import type { Case } from './cases.ts';
import { shareOf, type Figure, type FigureText } from './figure.ts';
import type { CaseGroup } from './group.ts';

const AT_OPERATION = 'share of operations among those whose complications are recorded or said to be "none"';
const LATER = 'share of operations among those with at least one later visit that says what was found or "none"';
const SOURCE = 'list of complications: Day et al., Eye 2015;29:552-60, and other published lists';

const ANY: FigureText = {
  name: 'any-complication',
  label: 'Any complication during the operation',
  method: AT_OPERATION,
  source: SOURCE,
  sensitive: true,
};
const ANY_LATER: FigureText = {
  name: 'any-later-complication',
  label: 'Any complication found later',
  method: LATER,
  source: SOURCE,
  sensitive: true,
  cautions: ['Only what was found at a recorded visit; eyes without a visit are missing, not free of complications.'],
};

/** What the later visits found together; null when no visit says. */
function foundLater(one: Case): readonly string[] | null {
  const lists = one.visits.map((visit) => visit.complications).filter((list) => list !== null);
  return lists.length === 0 ? null : [...new Set(lists.flat())];
}

/** Complications of a group as a whole. */
export function complications({ group, cases }: CaseGroup): readonly Figure[] {
  return [
    shareOf(ANY, group, cases, ({ operation }) => operation.complications && operation.complications.length > 0),
    shareOf(ANY_LATER, group, cases, (one) => {
      const later = foundLater(one);
      return later && later.length > 0;
    }),
  ];
}

/** Complications of the whole set, kind by kind. */
export function complicationKinds(cases: readonly Case[]): readonly Figure[] {
  return [
    ...wordShares(
      (word) => ({
        name: 'complication',
        label: `During the operation: ${word}`,
        method: AT_OPERATION,
        source: SOURCE,
        sensitive: true,
      }),
      (complication) => ({ complication }),
      cases,
      (one) => one.operation.complications,
    ),
    ...wordShares(
      (word) => ({
        name: 'later-complication',
        label: `Found later: ${word}`,
        method: LATER,
        source: SOURCE,
        sensitive: true,
      }),
      (complication) => ({ complication }),
      cases,
      foundLater,
    ),
  ];
}
