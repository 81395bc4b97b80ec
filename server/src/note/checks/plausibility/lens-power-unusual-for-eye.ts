import { operationCheck, type About } from '../check.ts';
import { differs, implantedLens, plannedLens, samePower } from '../support/lenses.ts';
import { keratometryOf, lengthOf, meanOf } from '../support/measurements.ts';
import { neededPower } from '../support/needed-power.ts';
import { related } from '../support/place.ts';
import { dioptres } from '../support/words.ts';

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
    if (differs(planned?.power, lens?.power, samePower)) return;
    const needed = neededPower(note);
    const amount = power.value.amount;
    if (needed === undefined || Math.abs(amount - needed.power) <= needed.margin) return;
    const sign = amount !== 0 && Math.abs(-amount - needed.power) <= needed.margin ? ' Is the sign right?' : '';
    say({
      at: power,
      message: `Power: ${power.text} is far from what an eye of ${length.text} and ${meanOf(keratometry).toFixed(2)} D needs for ${target?.text ?? 'emmetropia'}, roughly ${dioptres(needed.power, 0)}.${sign}`,
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
