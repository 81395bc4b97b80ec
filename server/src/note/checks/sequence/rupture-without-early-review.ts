import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { tornCapsule } from '../examples/scenarios.ts';
import { complicationOf } from '../support/course.ts';
import { related } from '../support/place.ts';
import { isContradicted } from '../support/torn.ts';
import { dueAfter, reviewsWithout } from '../support/reviews.ts';

export const ruptureWithoutEarlyReview = operationCheck({
  id: 'rupture-without-early-review',
  group: 'sequence and consequence',
  summary: 'The capsule was torn, and the eye is not to be seen within the first days.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const { date } = note;
    const rupture = note['capsule-state']?.posterior;
    const torn =
      rupture?.value === 'torn' ? rupture : complicationOf(note, 'posterior capsule rupture', 'vitreous loss')?.what;
    if (torn === undefined || date === undefined) return;
    if (torn === rupture && isContradicted(note, 'posterior capsule rupture')) return;
    const place = reviewsWithout(note, ({ due }) => due !== undefined && (dueAfter(due.value, date.value) ?? 99) <= 7);
    // No reviews at all: the missing review of the retina is remarked, and says enough.
    if (place === undefined || note.reviews === undefined) return;
    say({
      at: place,
      message: 'Reviews: the posterior capsule was torn, but no review is planned within the first week.',
      related: [related('the tear', torn)],
    });
  },
});

export const aboutRuptureWithoutEarlyReview: About = () => ({
  why: 'Pressure, inflammation and infection are more frequent after a capsule tear, and they come early.',
  whatToDo: 'Plan a review for the next days and write when.',
  source: 'Day et al., Eye 2015;29:552-60 (endophthalmitis 8-fold after rupture); common practice',
  since: '1.0',
  faulty: { note: composeNote(tornCapsule, 'reviews:\n  - what: dilated retina\n    due: 2 weeks') },
  sound: { note: tornCapsule },
});
