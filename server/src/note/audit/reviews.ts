import type { Case } from './cases.ts';
import { daysBetween } from './dates.ts';
import { share, type Figure, type FigureText } from './figure.ts';
import type { CaseGroup } from './group.ts';

/** A planned review that no visit has met although its day has passed. */
export interface OverdueReview {
  readonly operation: string;
  readonly surgeon: string;
  readonly what: string;
  readonly due: string;
  readonly daysOver: number;
}

const EARLY_SHARE = 0.25;

const OVERDUE: FigureText = {
  name: 'reviews-overdue',
  label: 'Planned reviews without a visit',
  method:
    'share of planned reviews whose day has passed and for which no visit is recorded on that day, later, or earlier by at most a quarter of the interval',
  source: 'common practice, no source',
  cautions: ['A visit elsewhere, or one not yet written down, looks the same as no visit.'],
};

interface ReviewState extends OverdueReview {
  readonly met: boolean;
}

function statesOf(one: Case, asOf: string, surgeonOf: (one: Case) => string): readonly ReviewState[] {
  const { operation, visits } = one;
  return operation.reviews.flatMap(({ what, due }) => {
    const daysOver = daysBetween(due, asOf);
    const interval = daysBetween(operation.date ?? due, due);
    if (daysOver === null || interval === null || daysOver <= 0) return [];
    const early = Math.floor(interval * EARLY_SHARE);
    const met = visits.some((visit) => {
      const late = visit.date === null ? null : daysBetween(due, visit.date);
      return late !== null && late >= -early;
    });
    return [{ operation: operation.id, surgeon: surgeonOf(one), what, due, daysOver, met }];
  });
}

/** How many planned reviews of a group have no visit by the day of the audit. */
export function reviews({ group, cases }: CaseGroup, asOf: string, surgeonOf: (one: Case) => string): Figure {
  const states = cases.flatMap((one) => statesOf(one, asOf, surgeonOf));
  return share(OVERDUE, group, states.filter((state) => !state.met).length, states.length, 0);
}

/** The reviews without a visit, the longest overdue first. */
export function overdueReviews(
  cases: readonly Case[],
  asOf: string,
  surgeonOf: (one: Case) => string,
): readonly OverdueReview[] {
  return cases
    .flatMap((one) => statesOf(one, asOf, surgeonOf))
    .filter((state) => !state.met)
    .map(({ met: _met, ...state }) => state)
    .toSorted((a, b) => b.daysOver - a.daysOver);
}
