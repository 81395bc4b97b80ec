import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { complicationOf, removesLens } from '../support/course.ts';
import { longLength } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { looksAtRetina, reviewsWithout } from '../support/reviews.ts';

export const longEyeWithoutRetinalReview = operationCheck({
  id: 'long-eye-without-retinal-review',
  group: 'sequence and consequence',
  summary: 'A long eye was operated, and no review of the peripheral retina is planned.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say, context) => {
    const length = longLength(note, context);
    if (length === undefined || !removesLens(note)) return;
    // Vitreous loss asks for the same review, more urgently.
    if (note['capsule-state']?.vitreous?.value === 'prolapsed' || complicationOf(note, 'vitreous loss') !== undefined)
      return;
    const place = reviewsWithout(note, looksAtRetina);
    if (place === undefined) return;
    say({
      at: place,
      message: `Reviews: the eye is ${length.text} long, but no review of the peripheral retina is planned.`,
      related: [related(`axial length: ${length.text}`, length)],
    });
  },
});

export const aboutLongEyeWithoutRetinalReview: About = () => ({
  why: 'The risk of retinal detachment grows with every millimetre, and lasts for years.',
  whatToDo: 'Plan a dilated examination of the peripheral retina and write when it is due.',
  source:
    'Petousis et al., Br J Ophthalmol 2016;100:1461 (hazard ratio 4 over 25 mm); Laube 2017, PLoS One (1.42 per mm)',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'reviews:\n  - what: pressure\n    due: 1 day') },
  sound: { note: longEye },
});
