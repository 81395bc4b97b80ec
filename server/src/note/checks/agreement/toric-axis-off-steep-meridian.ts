import { meridianDifference } from '../../calculations/angles.ts';
import { operationCheck, type About } from '../check.ts';
import { isToric } from '../support/course.ts';
import { astigmatismOf, isNotSquare } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const ASK_FROM = 15;

export const toricAxisOffSteepMeridian = operationCheck({
  id: 'toric-axis-off-steep-meridian',
  group: 'agreement',
  summary: 'The axis of a toric lens lies off the steep corneal meridian.',
  severity: 'warning',
  allowable: true,
  run: ({ preop, plan, lens }, say) => {
    const kind = lens?.kind ?? plan?.lens?.kind;
    // The plan is held against the cornea, and the lens against the plan.
    const axis = plan?.lens?.axis ?? lens?.axis;
    const steep = astigmatismOf(preop?.biometry)?.axis;
    const k = preop?.biometry?.k1;
    if (isNotSquare(preop?.biometry)) return;
    if (!isToric(kind?.value) || axis === undefined || steep === undefined || steep === null || k === undefined) return;
    const off = Math.abs(meridianDifference(axis.value.amount, steep));
    if (off <= ASK_FROM) return;
    const flat = off >= 80 ? ' That is the flat meridian: it would double the astigmatism.' : '';
    say({
      at: axis,
      message: `Toric lens: the axis ${axis.text} is ${rounded(off, 0)}° from the steep meridian (${rounded(steep, 0)}°).${flat}`,
      related: [related('the keratometry', k)],
    });
  },
});

export const aboutToricAxisOffSteepMeridian: About = () => ({
  why: 'Every degree off costs a thirtieth of the effect, 30° all of it, and 90° doubles the astigmatism.',
  whatToDo:
    'Compare axis and keratometry with the print-out. Some degrees are usual where the incision or the back of the cornea is allowed for.',
  source:
    'ISO 8429:1986; Felipe et al., J Cataract Refract Surg 2011 (effect of rotation); limit of 15° common practice, no source',
  since: '1.0',
  faulty: {
    note: 'preop:\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88\nplan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 178°\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 178°',
  },
  sound: {
    note: 'preop:\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88\nplan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 90°\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 90°',
  },
});
