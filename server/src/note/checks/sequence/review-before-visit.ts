import { followUpCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const reviewBeforeVisit = followUpCheck({
  id: 'review-before-visit',
  group: 'sequence and consequence',
  summary: 'A review that a visit asks for is dated before that visit.',
  severity: 'error',
  allowable: false,
  run: ({ date, reviews }, say) => {
    for (const { due, what } of reviews?.items ?? []) {
      if (date === undefined || due?.value.kind !== 'date' || due.value.date >= date.value) continue;
      say({
        at: due,
        message: `Review: ${what === undefined ? 'it' : `“${what.text}”`} is due ${due.text}, before this visit of ${date.text}.`,
        related: [related(`the visit: ${date.text}`, date)],
      });
    }
  },
});

export const aboutReviewBeforeVisit: About = () => ({
  why: 'A review of which the date is past never takes place.',
  whatToDo: 'Correct the date.',
  source: 'calendar arithmetic',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'reviews:\n  - what: refraction\n    due: 2030-06-06' },
  sound: { base: 'follow-up', note: 'reviews:\n  - what: refraction\n    due: 2031-06-06' },
});
