import { calculation } from '../calculation.ts';
import { optional, quantity } from '../fields.ts';
import { found } from '../outcome.ts';

const SECONDS = (label: string) => quantity(label, 's', 0, 1800);
const PERCENT = (label: string) => quantity(label, '%', 0, 100);

export const effectivePhacoTime = calculation<{ ultrasoundSeconds: number; meanPowerPercent: number }, number>({
  name: 'effective-phaco-time',
  topic: 'Machine',
  definition: 'Time at full power that would be the same as the time at the mean power.',
  inputs: { ultrasoundSeconds: SECONDS('ultrasound time'), meanPowerPercent: PERCENT('mean power') },
  unit: 's',
  domain: 'Longitudinal ultrasound; mean power over the time that ultrasound was on.',
  method: 'time x mean power / 100',
  source: { citation: 'common in papers', status: 'common practice' },
  cautions: ['Compares operations on one machine; it is not an energy and not comparable between machines.'],
  example: { input: { ultrasoundSeconds: 60, meanPowerPercent: 20 }, gives: 12 },
  compute: ({ ultrasoundSeconds, meanPowerPercent }) => found((ultrasoundSeconds * meanPowerPercent) / 100),
});

interface Ultrasound {
  readonly longitudinalSeconds: number;
  readonly longitudinalPercent: number;
  readonly torsionalSeconds: number;
  readonly torsionalPercent: number;
  readonly torsionalFactor?: number;
}

const USUAL_FACTOR = 0.4;

export const dissipatedEnergy = calculation<Ultrasound, number>({
  name: 'dissipated-energy',
  topic: 'Machine',
  definition: 'Ultrasound weighted by power, torsional ultrasound counted at a reduced factor.',
  inputs: {
    longitudinalSeconds: SECONDS('longitudinal ultrasound time'),
    longitudinalPercent: PERCENT('longitudinal power'),
    torsionalSeconds: SECONDS('torsional ultrasound time'),
    torsionalPercent: PERCENT('torsional power'),
    torsionalFactor: optional(quantity('torsional factor', '', 0, 1)),
  },
  unit: 's',
  domain: 'Machines whose makers publish the torsional factor; 0.4 unless another is stated.',
  method: 'longitudinal s x % / 100 + factor x torsional s x % / 100',
  source: { citation: 'factor of one maker as repeated in methods sections of papers', status: 'from memory' },
  cautions: ['Bound to the device: not a physical energy, and not comparable between machines.'],
  example: {
    input: { longitudinalSeconds: 5, longitudinalPercent: 20, torsionalSeconds: 45, torsionalPercent: 60 },
    gives: 11.8,
  },
  compute: (given) => {
    const { torsionalFactor = USUAL_FACTOR } = given;
    return found(
      (given.longitudinalSeconds * given.longitudinalPercent +
        torsionalFactor * given.torsionalSeconds * given.torsionalPercent) /
        100,
    );
  },
});
