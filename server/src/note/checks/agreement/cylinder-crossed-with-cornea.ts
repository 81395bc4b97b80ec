import { asAxis, meridianDifference } from '../../calculations/angles.ts';
import { operationCheck, type About } from '../check.ts';
import { has } from '../support/course.ts';
import { astigmatismOf, isNotSquare } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { dioptres, rounded } from '../support/words.ts';

const LEAST = 2;
const CROSSED = 70;

export const cylinderCrossedWithCornea = operationCheck({
  id: 'cylinder-crossed-with-cornea',
  group: 'agreement',
  summary: 'A strong cylinder of the refraction lies across that of the cornea.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const refraction = note.preop?.refraction;
    const k = note.preop?.biometry?.k1;
    const cornea = astigmatismOf(note.preop?.biometry);
    if (refraction === undefined || refraction.value.axis === null || k === undefined) return;
    if (
      cornea?.axis === undefined ||
      cornea.axis === null ||
      cornea.magnitude < LEAST ||
      Math.abs(refraction.value.cylinder) < LEAST
    )
      return;
    if (isNotSquare(note.preop?.biometry)) return;
    if (has(note.diagnosis?.cataract, 'pseudophakia')) return;
    // A minus cylinder lies on the flat meridian, a plus cylinder on the steep one.
    const corrects = asAxis(refraction.value.axis + (refraction.value.cylinder < 0 ? 90 : 0));
    const off = Math.abs(meridianDifference(corrects, cornea.axis));
    if (off < CROSSED) return;
    say({
      at: refraction,
      message: `Refraction: the cylinder of ${refraction.text} lies ${rounded(off, 0)}° across the cornea (${dioptres(cornea.magnitude)}, steep at ${rounded(cornea.axis, 0)}°). Is an axis written for the other form of cylinder?`,
      related: [related('the keratometry', k)],
    });
  },
});

export const aboutCylinderCrossedWithCornea: About = () => ({
  why: 'When both are 2 D or more and 90° apart, an axis is usually written for the other form of cylinder, or K1 and K2 have changed places.',
  whatToDo: 'Compare both axes with the print-out. A lens with astigmatism of its own can do this, but rarely so much.',
  source: 'double-angle vectors; limits common practice, no source',
  since: '1.0',
  faulty: {
    note: 'preop:\n  refraction: -1.25 / -2.50 x 90\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88',
  },
  sound: {
    note: 'preop:\n  refraction: -1.25 / -2.50 x 178\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88',
  },
});
