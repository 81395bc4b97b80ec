import type { Due, Field } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { daysBetween, later } from '../support/dates.ts';
import { related } from '../support/place.ts';

export const reviewsOutOfOrder = operationCheck({
  id: 'reviews-out-of-order',
  group: 'sequence and consequence',
  summary: 'The reviews are not written in the order in which they are due.',
  severity: 'info',
  allowable: true,
  run: ({ date, reviews }, say) => {
    if (date === undefined) return;
    let before: Field<Due> | undefined;
    for (const { due } of reviews?.items ?? []) {
      if (due === undefined) continue;
      const [here, earlier] = [
        dayOf(due.value, date.value),
        before === undefined ? undefined : dayOf(before.value, date.value),
      ];
      if (
        before !== undefined &&
        here !== undefined &&
        earlier !== undefined &&
        (daysBetween(earlier, here) ?? 0) < 0
      ) {
        say({
          at: due,
          message: `Reviews: ${due.text} stands after ${before.text}, although it is due earlier. Is one of them a slip?`,
          related: [related(`due: ${before.text}`, before)],
        });
        return;
      }
      before = due;
    }
  },
});

export const aboutReviewsOutOfOrder: About = () => ({
  why: 'A later review before an earlier one is usually a slip of the date, and the earlier one is missed.',
  whatToDo: 'Look at both dates; then write the reviews in the order in which they are due.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'reviews:\n  - what: refraction\n    due: 4 weeks\n  - what: pressure\n    due: 1 day' },
  sound: { note: 'reviews:\n  - what: pressure\n    due: 1 day\n  - what: refraction\n    due: 4 weeks' },
});

function dayOf(due: Due, date: string): string | undefined {
  if (due.kind === 'after') return later(date, due.count, due.unit);
  // A date before the operation has a remark of its own.
  return due.date < date ? undefined : due.date;
}
