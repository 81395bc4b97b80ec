import { dissipatedEnergy } from '../../calculations/machine/energy.ts';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const TOLERANCE = 0.15;

export const dissipatedEnergyDisagrees = operationCheck({
  id: 'dissipated-energy-disagrees',
  group: 'arithmetic',
  summary: 'The dissipated energy is not what times and powers give.',
  severity: 'warning',
  allowable: true,
  run: ({ nucleus }, say) => {
    const energy = nucleus?.['dissipated-energy'];
    const [time, power] = [nucleus?.['ultrasound-time'], nucleus?.['mean-power']];
    const [torsionalTime, torsionalPower] = [nucleus?.['torsional-time'], nucleus?.['torsional-power']];
    if (energy === undefined || (time === undefined) !== (power === undefined)) return;
    if ((torsionalTime === undefined) !== (torsionalPower === undefined)) return;
    const first = time ?? torsionalTime;
    if (first === undefined) return;
    const expected = dissipatedEnergy({
      longitudinalSeconds: time?.value.amount ?? 0,
      longitudinalPercent: power?.value.amount ?? 0,
      torsionalSeconds: torsionalTime?.value.amount ?? 0,
      torsionalPercent: torsionalPower?.value.amount ?? 0,
    });
    if (!expected.ok || Math.abs(expected.value - energy.value.amount) <= TOLERANCE * Math.max(expected.value, 1))
      return;
    say({
      at: energy,
      message: `Ultrasound: the dissipated energy is ${energy.text}, but times and powers give ${rounded(expected.value, 2)}.`,
      related: [time, power, torsionalTime, torsionalPower].flatMap((field) =>
        field === undefined ? [] : [related(field.text, field)],
      ),
    });
  },
});

export const aboutDissipatedEnergyDisagrees: About = () => ({
  why: 'A digit of one of them is wrong, or they were read from the display of another operation.',
  whatToDo:
    'Compare with the display of the machine. Makers weight torsional ultrasound differently: allow the remark if yours does.',
  source:
    'longitudinal s × % / 100 + 0.4 × torsional s × % / 100 (factor of one maker, from memory of methods sections)',
  since: '1.0',
  faulty: { note: 'nucleus:\n  torsional-time: 40 s\n  torsional-power: 60 %\n  dissipated-energy: 2.00' },
  sound: { note: 'nucleus:\n  torsional-time: 40 s\n  torsional-power: 60 %\n  dissipated-energy: 20.00' },
});
