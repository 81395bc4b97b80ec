import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { dueAfter, reviewsWithout } from '../support/reviews.ts';

export const viscoelasticLeftBehindLens = operationCheck({
  id: 'viscoelastic-left-behind-lens',
  group: 'sequence and consequence',
  summary: 'Viscoelastic was left behind the lens, and no early review of the pressure is planned.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const removed = note.lens?.['ovd-removed-behind'];
    const { date } = note;
    if (removed?.value !== false || date === undefined) return;
    const place = reviewsWithout(note, ({ due }) => due !== undefined && (dueAfter(due.value, date.value) ?? 9) <= 2);
    if (place === undefined) return;
    say({
      at: removed,
      message: 'Viscoelastic: it was left behind the lens, but no review is planned within two days for the pressure.',
      related: [related('the reviews', place)],
    });
  },
});

export const aboutViscoelasticLeftBehindLens: About = () => ({
  why: 'It raises the pressure in the first hours, and in a bag that is closed tightly it pushes the lens forward.',
  whatToDo: 'Plan the pressure for the next day, or correct the field.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'lens:\n  ovd-removed-behind: no' },
  sound: {
    note: 'lens:\n  ovd-removed-behind: no\nreviews:\n  - what: pressure\n    due: 1 day\n  - what: refraction\n    due: 4 weeks',
  },
});
