import { textCheck, type About } from '../check.ts';
import { logmarOf } from '../../computing/acuities.ts';
import { related } from '../support/place.ts';

const LINE = 0.1;

export const uncorrectedBetterThanCorrected = textCheck({
  id: 'uncorrected-better-than-corrected',
  group: 'plausibility',
  summary: 'The eye is recorded as seeing better without correction than with it.',
  severity: 'warning',
  allowable: true,
  run: (reading, say) => {
    const acuity =
      reading.kind === 'operation'
        ? reading.note.preop?.acuity
        : reading.kind === 'follow-up'
          ? reading.note.acuity
          : undefined;
    const { uncorrected, corrected } = acuity ?? {};
    if (uncorrected === undefined || corrected === undefined) return;
    const [without, withGlasses] = [logmarOf(uncorrected, ''), logmarOf(corrected, '')];
    if (!without.ok || !withGlasses.ok || withGlasses.value - without.value <= LINE + 1e-9) return;
    say({
      at: corrected,
      message: `Acuity: ${corrected.text} with correction is worse than ${uncorrected.text} without. Have they changed places?`,
      related: [related(`uncorrected: ${uncorrected.text}`, uncorrected)],
    });
  },
});

export const aboutUncorrectedBetterThanCorrected: About = () => ({
  why: 'Then the two have changed places, or one of them is a slip.',
  whatToDo: 'Compare with the clinic letter.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'preop:\n  acuity:\n    uncorrected: 6/9' },
  sound: { note: 'preop:\n  acuity:\n    uncorrected: 6/18' },
});
