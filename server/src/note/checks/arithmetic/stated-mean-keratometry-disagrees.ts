import type { About } from '../check.ts';
import { keratometryOf, meanOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { statedCheck } from '../support/stated.ts';

export const statedMeanKeratometryDisagrees = statedCheck({
  id: 'stated-mean-keratometry-disagrees',
  what: 'the mean keratometry',
  topic: 'Keratometry',
  summary: 'The mean keratometry in the text is not that of K1 and K2.',
  wording: {
    hints: ['mean k', 'k mean', 'average k'],
    pattern: /\b(?:mean k|k mean|average k|mean keratometry)(?: of| was| is|:)? (\d{2}(?:\.\d+)?)/giu,
  },
  within: 0.13,
  derive: ({ preop }) => {
    const keratometry = keratometryOf(preop?.biometry);
    const { k1, k2 } = preop?.biometry ?? {};
    if (keratometry === undefined || k1 === undefined || k2 === undefined) return undefined;
    const value = meanOf(keratometry);
    return {
      value,
      shown: `${value.toFixed(2)} D`,
      related: [related(`K1: ${k1.text}`, k1), related(`K2: ${k2.text}`, k2)],
    };
  },
});

export const aboutStatedMeanKeratometryDisagrees: About = () => ({
  why: 'The mean was copied from another eye or another visit, or a K is mistyped.',
  whatToDo: 'Correct the number in the text, or the fields. A number that is computed need not be typed at all.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'free-text: mean K 44.37, regular' },
  sound: { note: 'free-text: mean K 43.38, regular' },
});
