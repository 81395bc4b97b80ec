import { operationCheck, type About } from '../check.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { related } from '../support/place.ts';

export const reviewBeforeOperation = operationCheck({
  id: 'review-before-operation',
  group: 'sequence and consequence',
  summary: 'A review is dated before the operation.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const { date, reviews } = note;
    if (date === undefined || dateInDoubt(note, context)) return;
    for (const { due, what } of reviews?.items ?? []) {
      if (due?.value.kind !== 'date' || due.value.date >= date.value) continue;
      say({
        at: due,
        message: `Review: ${what === undefined ? 'it' : `“${what.text}”`} is due ${due.text}, before the operation of ${date.text}.`,
        related: [related(`the operation: ${date.text}`, date)],
      });
    }
  },
});

export const aboutReviewBeforeOperation: About = () => ({
  why: 'A review of which the date is past never takes place.',
  whatToDo: 'Correct the date, or write how long after the operation it is due: 1 day, 4 weeks.',
  source: 'calendar arithmetic',
  since: '1.0',
  faulty: { note: 'reviews:\n  - what: refraction and pressure\n    due: 2030-05-06' },
  sound: { note: 'reviews:\n  - what: refraction and pressure\n    due: 2031-05-06' },
});
