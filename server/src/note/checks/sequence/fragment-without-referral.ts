import { operationCheck, type About } from '../check.ts';
import { complicationOf } from '../support/course.ts';
import { related } from '../support/place.ts';
import { looksAtRetina, reviewsWithout } from '../support/reviews.ts';

const lines = (review: string): string =>
  `complications:\n  - what: lens fragment into vitreous\n    when: nucleus\n    account: a small fragment sank\n    action: chamber cleared, fragment left for the retina team\n    told: yes\nreviews:\n  - what: pressure and wound\n    due: 1 day\n  - what: ${review}\n    due: 3 days`;

export const fragmentWithoutReferral = operationCheck({
  id: 'fragment-without-referral',
  group: 'sequence and consequence',
  summary: 'A lens fragment fell into the vitreous, and nobody of the retina is to see the eye.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say) => {
    const fragment = complicationOf(note, 'lens fragment into vitreous', 'retained fragment')?.what;
    if (fragment === undefined) return;
    // Vitreous loss asks for the same review in the same place.
    if (note['capsule-state']?.vitreous?.value === 'prolapsed' || complicationOf(note, 'vitreous loss') !== undefined)
      return;
    const place = reviewsWithout(note, looksAtRetina);
    if (place === undefined) return;
    say({
      at: place,
      message: `Reviews: “${fragment.value}” is recorded, but no review by the retina team is planned.`,
      related: [related('the complication', fragment)],
    });
  },
});

export const aboutFragmentWithoutReferral: About = () => ({
  why: 'A fragment left behind inflames the eye and raises the pressure; it is removed within days.',
  whatToDo: 'Plan the review by the retina team and write when.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: lines('refraction') },
  sound: { note: lines('retina team, vitrectomy for the fragment') },
});
