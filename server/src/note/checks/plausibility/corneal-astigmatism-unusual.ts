import { operationCheck, type About } from '../check.ts';
import { astigmatismOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const MOST = 5;

export const cornealAstigmatismUnusual = operationCheck({
  id: 'corneal-astigmatism-unusual',
  group: 'plausibility',
  summary: 'The two corneal powers differ by more than 5 dioptres.',
  severity: 'warning',
  allowable: true,
  run: ({ preop }, say) => {
    const { k1, k2 } = preop?.biometry ?? {};
    const astigmatism = astigmatismOf(preop?.biometry);
    if (k1 === undefined || k2 === undefined || astigmatism === undefined || astigmatism.magnitude <= MOST) return;
    say({
      at: k1,
      message: `Keratometry: ${k1.text} and ${k2.text} differ by ${rounded(astigmatism.magnitude, 2)} D. Is a digit wrong?`,
      related: [related(`K2: ${k2.text}`, k2)],
    });
  },
});

export const aboutCornealAstigmatismUnusual: About = () => ({
  why: 'So much astigmatism is rare outside disease of the cornea: a digit of K1 or K2 is probably wrong.',
  whatToDo: 'Compare with the print-out. If it is real, name its cause.',
  source: 'limit of 5 D: common practice, no source',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    k1: 38.00 D @ 178' },
  sound: { note: 'preop:\n  biometry:\n    k1: 42.00 D @ 178' },
});
