import type { About } from '../check.ts';
import { related } from '../support/place.ts';
import { statedCheck } from '../support/stated.ts';
import { dioptres } from '../support/words.ts';

export const statedEquivalentDisagrees = statedCheck({
  id: 'stated-equivalent-disagrees',
  what: 'the spherical equivalent',
  topic: 'Refraction',
  summary: 'The spherical equivalent in the text is not that of the refraction.',
  wording: {
    hints: ['spherical equivalent'],
    pattern: /\bspherical equivalent(?: of| was| is|:)? ([+\-\u2212\u2013]?\d+(?:\.\d+)?)/giu,
  },
  within: 0.13,
  derive: ({ preop }) => {
    const refraction = preop?.refraction;
    if (refraction === undefined) return undefined;
    const value = refraction.value.sphere + refraction.value.cylinder / 2;
    return { value, shown: dioptres(value), related: [related(`the refraction: ${refraction.text}`, refraction)] };
  },
});

export const aboutStatedEquivalentDisagrees: About = () => ({
  why: 'Sphere plus half the cylinder: a slip of the sign of the cylinder is the usual cause.',
  whatToDo: 'Correct the number in the text, or the fields. A number that is computed need not be typed at all.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'free-text: spherical equivalent -0.88 before the operation' },
  sound: { note: 'free-text: spherical equivalent -1.63 before the operation' },
});
