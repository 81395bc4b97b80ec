import { operationCheck, type About } from '../check.ts';
import { keratometryOf, meanOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const SCREENING_LIMIT = 1;
const WIDE = 5;

export const eyesDifferInKeratometry = operationCheck({
  id: 'eyes-differ-in-keratometry',
  group: 'agreement',
  summary: 'The corneas of the two eyes differ by more than the screening limit.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const { biometry, 'fellow-eye': fellowEye } = note.preop ?? {};
    const [here, there] = [keratometryOf(biometry), keratometryOf(fellowEye)];
    if (here === undefined || there === undefined || biometry?.k1 === undefined || fellowEye?.k1 === undefined) return;
    // A wide gap between K1 and K2 is asked about by itself.
    if (Math.abs(here.k1.power - here.k2.power) > WIDE) return;
    const difference = Math.abs(meanOf(here) - meanOf(there));
    if (difference <= SCREENING_LIMIT + 1e-9) return;
    say({
      at: biometry.k1,
      message: `Keratometry: the mean is ${rounded(meanOf(here), 2)} D here and ${rounded(meanOf(there), 2)} D in the other eye, ${rounded(difference, 2)} D apart (more than ${SCREENING_LIMIT} D). Measure again, or say why.`,
      related: [related('the other eye', fellowEye.k1)],
    });
  },
});

export const aboutEyesDifferInKeratometry: About = () => ({
  why: 'One dioptre of keratometry is about one dioptre of refraction after the operation.',
  whatToDo:
    'Measure again, or find the reason: surgery, a scar, a contact lens. Then allow the remark with that reason.',
  source: 'Holladay et al., J Cataract Refract Surg 1988;14:17-24 (data screening; from memory): more than 1 D',
  since: '1.0',
  faulty: { note: 'preop:\n  fellow-eye:\n    k1: 44.62 D @ 5\n    k2: 45.12 D @ 95' },
  sound: { note: 'preop:\n  fellow-eye:\n    k1: 43.62 D @ 5\n    k2: 44.12 D @ 95' },
});
