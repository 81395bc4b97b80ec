import { overdueReviews } from '../calculations/time/reviews.ts';
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

const OVERDUE: FigureText = {
  name: 'reviews-overdue',
  label: 'Planned reviews without a visit',
  method:
    'share of planned reviews whose day has passed and for which no visit is recorded on that day, later, or earlier by at most a quarter of the interval',
  source: 'common practice, no source',
  cautions: ['A visit elsewhere, or one not yet written down, looks the same as no visit.'],
};

interface CaseReviews {
  /** Reviews whose day has passed. */
  readonly passed: number;
  readonly overdue: readonly OverdueReview[];
}

function reviewsOf(one: Case, asOf: string, surgeonOf: (one: Case) => string): CaseReviews {
  const { operation, visits } = one;
  const passed = operation.reviews.filter(({ due }) => (daysBetween(due, asOf) ?? 0) > 0).length;
  const found = overdueReviews({
    operationDate: operation.date ?? '',
    reviews: operation.reviews.map((review) => ({ ...review, by: 'note' })),
    visits: visits.flatMap((visit) => visit.date ?? []),
    today: asOf,
  });
  const overdue = found.ok ? found.value : [];
  return {
    passed,
    overdue: overdue.map(({ what, due, days }) => ({
      operation: operation.id,
      surgeon: surgeonOf(one),
      what,
      due,
      daysOver: days,
    })),
  };
}

/** How many planned reviews of a group have no visit by the day of the audit. */
export function reviews({ group, cases }: CaseGroup, asOf: string, surgeonOf: (one: Case) => string): Figure {
  const all = cases.map((one) => reviewsOf(one, asOf, surgeonOf));
  const overdue = all.reduce((sum, one) => sum + one.overdue.length, 0);
  const passed = all.reduce((sum, one) => sum + one.passed, 0);
  return share(OVERDUE, group, overdue, passed, 0);
}

/** The reviews without a visit, the longest overdue first. */
export function allOverdue(
  cases: readonly Case[],
  asOf: string,
  surgeonOf: (one: Case) => string,
): readonly OverdueReview[] {
  return cases.flatMap((one) => reviewsOf(one, asOf, surgeonOf).overdue).toSorted((a, b) => b.daysOver - a.daysOver);
}
