import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { tornCapsule } from '../examples/scenarios.ts';
import { differsFromVerified } from '../support/lenses.ts';
import { related } from '../support/place.ts';
import { dioptres } from '../support/words.ts';

/** By how much a power chosen for the bag is lowered for the sulcus, without capture of the optic. */
function lessInSulcus(power: number): number {
  if (power > 28) return 1.5;
  if (power > 17) return 1;
  return power > 9 ? 0.5 : 0;
}

export const bagPowerInSulcus = operationCheck({
  id: 'bag-power-in-sulcus',
  group: 'sequence and consequence',
  summary: 'The lens lies in the sulcus with the power planned for the bag.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    if (differsFromVerified(note)) return;
    const { plan, lens } = note;
    const [planned, power, placed] = [plan?.lens?.power, lens?.power, lens?.placed];
    if (placed?.value !== 'sulcus' || planned === undefined || power === undefined) return;
    const less = lessInSulcus(planned.value.amount);
    if (less === 0 || power.value.amount < planned.value.amount) return;
    say({
      at: power,
      message: `Power: ${power.text} lies in the sulcus, but ${planned.text} was planned for the bag. In the sulcus about ${dioptres(planned.value.amount - less, 1)} is usual.`,
      related: [related(`planned for the bag: ${planned.text}`, planned), related('placed: sulcus', placed)],
    });
  },
});

export const aboutBagPowerInSulcus: About = () => ({
  why: 'In the sulcus the lens lies further forward and acts stronger: the eye is left myopic.',
  whatToDo: 'Correct power or placement. If the power was left on purpose, allow the remark with the reason.',
  source:
    'common practice, no source: 1.5 D less above 28 D, 1 D above 17 D, 0.5 D above 9 D, nothing below; none of it with the optic captured',
  since: '1.0',
  faulty: { note: composeNote(tornCapsule, 'safety:\n  lens-verified:\n    power: +21.5 D\nlens:\n  power: +21.5 D') },
  sound: { note: tornCapsule },
});
