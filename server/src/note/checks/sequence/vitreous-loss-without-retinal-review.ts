import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { tornCapsule } from '../examples/scenarios.ts';
import { complicationOf } from '../support/course.ts';
import { related } from '../support/place.ts';
import { isContradicted } from '../support/torn.ts';
import { looksAtRetina, reviewsWithout } from '../support/reviews.ts';

export const vitreousLossWithoutRetinalReview = operationCheck({
  id: 'vitreous-loss-without-retinal-review',
  group: 'sequence and consequence',
  summary: 'Vitreous was lost, and no review of the retina is planned.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say) => {
    const vitreous = note['capsule-state']?.vitreous;
    const loss = vitreous?.value === 'prolapsed' ? vitreous : complicationOf(note, 'vitreous loss')?.what;
    if (loss === vitreous && isContradicted(note, 'vitreous loss')) return;
    const place = loss === undefined ? undefined : reviewsWithout(note, looksAtRetina);
    if (loss === undefined || place === undefined) return;
    say({
      at: place,
      message: 'Reviews: vitreous was lost, but no review of the retina is planned.',
      related: [related('the vitreous loss', loss)],
    });
  },
});

export const aboutVitreousLossWithoutRetinalReview: About = () => ({
  why: 'Vitreous loss raises the risk of retinal detachment more than tenfold.',
  whatToDo: 'Plan a dilated examination of the retina and write it under “reviews”.',
  source:
    'Petousis et al., Br J Ophthalmol 2016;100:1461 (hazard ratio 12.8); Day et al., Eye 2015;29:552-60 (42-fold within 3 months)',
  since: '1.0',
  faulty: { note: composeNote(tornCapsule, 'reviews:\n  - what: pressure, wound, chamber\n    due: 1 day') },
  sound: { note: tornCapsule },
});
