import type { About } from '../check.ts';
import { related } from '../support/place.ts';
import { statedCheck } from '../support/stated.ts';
import { rounded } from '../support/words.ts';

export const statedOverlapDisagrees = statedCheck({
  id: 'stated-overlap-disagrees',
  what: 'the overlap',
  topic: 'Capsulotomy',
  summary: 'The overlap of capsule and optic in the text is not that of the two diameters.',
  wording: { hints: ['overlap'], pattern: /\boverlap(?: of| was| is|:)? (\d(?:\.\d+)?) ?mm/giu },
  within: 0.21,
  derive: ({ capsulotomy, lens }) => {
    const [diameter, optic] = [capsulotomy?.diameter, lens?.['optic-diameter']];
    if (diameter === undefined || optic === undefined) return undefined;
    const value = (optic.value.amount - diameter.value.amount) / 2;
    return {
      value,
      shown: `${rounded(value, 2)} mm`,
      related: [related(`the capsulotomy: ${diameter.text}`, diameter), related(`the optic: ${optic.text}`, optic)],
    };
  },
});

export const aboutStatedOverlapDisagrees: About = () => ({
  why: 'Half the difference of the diameters is the overlap when both are centred: one of the three is wrong.',
  whatToDo: 'Correct the number in the text, or the fields. A number that is computed need not be typed at all.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'free-text: overlap 0.9 mm all round' },
  sound: { note: 'free-text: overlap 0.4 mm all round' },
});
