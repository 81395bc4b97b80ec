import type { Operation } from '@sideport/schemas';
import { srkT } from '../../calculations/lens-power/srk-t.ts';
import { operationCheck, type About } from '../check.ts';
import { has, removesLens } from '../support/course.ts';
import { differs, implantedLens, plannedLens, samePower } from '../support/lenses.ts';
import { keratometryOf, lengthOf, meanOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { dioptres } from '../support/words.ts';

/** An ordinary lens; only slips of sign, digit or eye are to be found. */
const A_CONSTANT = 118.5;

export const lensPowerUnusualForEye = operationCheck({
  id: 'lens-power-unusual-for-eye',
  group: 'plausibility',
  summary: 'The power is far from what an eye of this length and curvature needs.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const [lens, planned] = [implantedLens(note), plannedLens(note)];
    const power = planned?.power ?? lens?.power;
    const [length, target, k1] = [lengthOf(note), note.plan?.target, note.preop?.biometry?.k1];
    const keratometry = keratometryOf(note.preop?.biometry);
    if (power === undefined || length === undefined || keratometry === undefined || k1 === undefined) return;
    // Where plan and implant differ, that is the remark.
    if (differs(planned?.power, lens?.power, samePower) || isSpecial(note)) return;
    const axialLengthMm = length.value.amount;
    const outcome = srkT.power({
      axialLengthMm,
      meanKeratometryD: meanOf(keratometry),
      aConstant: A_CONSTANT,
      targetD: target?.value.amount ?? 0,
    });
    if (!outcome.ok) return;
    const amount = power.value.amount;
    const margin = axialLengthMm < 26 ? 4 : axialLengthMm < 30 ? 5 : 7;
    if (Math.abs(amount - outcome.value) <= margin) return;
    const sign = amount !== 0 && Math.abs(-amount - outcome.value) <= margin ? ' Is the sign right?' : '';
    say({
      at: power,
      message: `Power: ${power.text} is far from what an eye of ${length.text} and ${meanOf(keratometry).toFixed(2)} D needs for ${target?.text ?? 'emmetropia'}, roughly ${dioptres(outcome.value, 0)}.${sign}`,
      related: [
        related(`axial length: ${length.text}`, length),
        related(`K1: ${k1.text}`, k1),
        ...(target === undefined ? [] : [related(`target: ${target.text}`, target)]),
      ],
    });
  },
});

export const aboutLensPowerUnusualForEye: About = () => ({
  why: 'A minus power is normal in an extremely long eye and alarming in an average one; a wrong sign, a wrong row or the biometry of another eye looks like this.',
  whatToDo:
    'Compare power, length, keratometry and target with the print-out. If they are right, allow the remark with the reason.',
  source:
    'Retzlaff, Sanders and Kraff, J Cataract Refract Surg 1990;16:333-40 (SRK/T, from memory), as a rough guide; margins of 4 to 7 D common practice, no source',
  since: '1.0',
  faulty: {
    note: 'plan:\n  lens:\n    power: -21.5 D\nsafety:\n  lens-verified:\n    power: -21.5 D\nlens:\n  power: -21.5 D',
  },
  sound: { note: 'plan:\n  lens:\n    power: +21.5 D' },
});

const OTHER_OPTICS = ['anterior chamber', 'iris-claw'];

/** Eyes and lenses for which the rough guide does not hold. */
function isSpecial(note: Operation): boolean {
  const kind = (note.lens?.kind ?? note.plan?.lens?.kind)?.value;
  return (
    !removesLens(note) ||
    has(note.comorbidity, 'previous corneal refractive surgery') !== undefined ||
    (kind !== undefined && OTHER_OPTICS.includes(kind))
  );
}
