import type { Due } from '@sideport/schemas';
import { refused } from '../../calculations/outcome.ts';
import { reviewDate } from '../../calculations/time/review-date.ts';
import { overdueReviews, reviewDates, type WantedReview } from '../../calculations/time/reviews.ts';
import type { ComputedData } from '../computed.ts';
import type { Definition } from '../definition.ts';
import { from, type Known } from '../known.ts';
import { HEAD, type OperationFacts } from '../operation-facts.ts';
import { result, spotOf, type Result } from '../result.ts';

/** Axial length from which an eye counts as long where the department does not say. */
const LONG_EYE_MM = 26;

function wanted(what: string, by: string, due: Due): WantedReview {
  return due.kind === 'date' ? { what, by, date: due.date } : { what, by, count: due.count, interval: due.unit };
}

/** Whether an entry of the department's schedule is meant for this eye. */
function isFor(when: string | undefined, { note, axialLength, department }: OperationFacts): boolean {
  if (when === undefined || when === 'always') return true;
  if (when === 'long eye')
    return axialLength.ok && axialLength.value > (department?.thresholds?.['long-eye']?.value.amount ?? LONG_EYE_MM);
  if (when === 'complication') return (note.complications?.items.length ?? 0) > 0;
  return (
    note.closure?.sutures !== undefined || note.incisions?.items.some(({ sutures }) => sutures !== undefined) === true
  );
}

export function wantedReviews(facts: OperationFacts): readonly WantedReview[] {
  const own = facts.note.reviews?.items ?? [];
  const schedule = facts.department?.['review-schedule']?.items ?? [];
  return [
    ...own.flatMap(({ what, due }) => (due === undefined ? [] : [wanted(what?.value ?? 'review', 'note', due.value)])),
    ...schedule.flatMap(({ what, due, when }) =>
      due !== undefined && isFor(when?.value, facts)
        ? [wanted(what?.value ?? 'review', "department's schedule", due.value)]
        : [],
    ),
  ];
}

/** Dates of the reviews of the note, of the department's schedule, and those that are overdue. */
export const reviews: Definition<OperationFacts> = {
  names: ['review-date', 'review-dates', 'overdue-reviews'],
  beside: ['reviews', 'date', ...HEAD],
  compute: (facts) => {
    const { note, date, today, visits, spot } = facts;
    const items = note.reviews?.items ?? [];
    const dates = items.flatMap(({ due }): readonly Result[] => {
      if (due === undefined || due.value.kind === 'date') return [];
      const { count, unit } = due.value;
      const inputs = { 'operation-date': date, after: { ok: true, value: due.text, unit: '' } as const };
      return [
        result('review-date', spotOf(due), inputs, (given) =>
          reviewDate({ operationDate: given['operation-date'], count, interval: unit }),
        ),
      ];
    });
    const list = wantedReviews(facts);
    if (list.length === 0) return dates;
    const at = spot(note.reviews?.$, note.$.said['reviews'], note.date);
    const due = from({ date }, (given) => reviewDates({ operationDate: given.date, reviews: list }));
    const asked: Known<ComputedData> = { ok: true, value: list.map(({ what }) => what), unit: '' };
    const all: readonly Result[] = [
      ...dates,
      { name: 'review-dates', at, inputs: { 'operation-date': date, reviews: asked }, outcome: due },
    ];
    if (note.status?.value === 'planned') return all;
    const day: Known<string> =
      today === null ? refused('today’s date is not known') : { ok: true, value: today, unit: '' };
    const seen = visits();
    const overdue = from({ date, due, day }, (given) =>
      overdueReviews({ operationDate: given.date, reviews: given.due, visits: seen, today: given.day }),
    );
    const inputs = {
      'operation-date': date,
      visits: { ok: true, value: seen, unit: '' } as const,
      today: day,
    };
    return [
      ...all,
      { name: 'overdue-reviews', at, inputs, outcome: overdue, inline: overdue.ok && overdue.value.length > 0 },
    ];
  },
};
