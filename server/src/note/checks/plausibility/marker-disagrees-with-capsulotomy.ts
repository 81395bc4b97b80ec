import { diameterUnderMark } from '../../calculations/capsulotomy/corneal-mark.ts';
import { operationCheck, type About } from '../check.ts';
import { keratometryOf, meanOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const APART = 0.6;

export const markerDisagreesWithCapsulotomy = operationCheck({
  id: 'marker-disagrees-with-capsulotomy',
  group: 'plausibility',
  summary: 'The ring mark on the cornea does not lead to the capsulotomy aimed at.',
  severity: 'info',
  allowable: true,
  run: ({ capsulotomy, preop }, say) => {
    const mark = capsulotomy?.['corneal-marker'];
    const aimed = capsulotomy?.aimed;
    const depth = preop?.biometry?.['chamber-depth'];
    const keratometry = keratometryOf(preop?.biometry);
    if (mark === undefined || aimed === undefined || depth === undefined || keratometry === undefined) return;
    const leads = diameterUnderMark({
      markMm: mark.value.amount,
      depthMm: depth.value.amount,
      meanKeratometryD: meanOf(keratometry),
    });
    if (!leads.ok || Math.abs(leads.value - aimed.value.amount) <= APART) return;
    say({
      at: mark,
      message: `Capsulotomy: a corneal mark of ${mark.text} leads to about ${rounded(leads.value, 1)} mm on the capsule, but ${aimed.text} was aimed at.`,
      related: [related(`aimed at: ${aimed.text}`, aimed)],
    });
  },
});

export const aboutMarkerDisagreesWithCapsulotomy: About = () => ({
  why: 'The cornea magnifies: a mark of 6 mm leads to about 5.4 mm. A mark of the size aimed at makes the opening too small.',
  whatToDo: 'Compare both numbers. The computed values show which mark would have led to the diameter.',
  source:
    'paraxial optics of the cornea; ring-guided capsulotomy in 40 eyes (Korean study, abstract): about 116 % magnification; margin of 0.6 mm common practice, no source',
  since: '1.0',
  faulty: { note: 'capsulotomy:\n  aimed: 5.5 mm\n  corneal-marker: 5.0 mm' },
  sound: { note: 'capsulotomy:\n  aimed: 5.25 mm\n  corneal-marker: 6.0 mm' },
});
