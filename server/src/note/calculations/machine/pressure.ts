import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found } from '../outcome.ts';

/** Millimetres of mercury in a centimetre of water: 98.0665 Pa over 133.322387 Pa. */
const MMHG_PER_CMH2O = 98.0665 / 133.322387;

const source = { citation: 'definition of the units (98.0665 Pa, 133.322387 Pa)', status: 'derived' } as const;
const domain = 'Static: the column of fluid standing still, its height taken above the EYE.';
const cautions = [
  'Static pressure. Flow lowers it, and measurements in eyes at rest were a little higher (Suzuki et al., J Cataract Refract Surg 2009, seen).',
];

export const infusionPressure = calculation<{ bottleHeightCm: number }, number>({
  name: 'infusion-pressure',
  topic: 'Machine',
  definition: 'Infusion pressure at the eye from the height of the bottle.',
  inputs: { bottleHeightCm: quantity('bottle height', 'cm', 0, 200) },
  unit: 'mmHg',
  domain,
  method: 'height x 0.735559',
  source,
  cautions,
  example: { input: { bottleHeightCm: 75 }, gives: 55.166935 },
  compute: ({ bottleHeightCm }) => found(bottleHeightCm * MMHG_PER_CMH2O),
});

export const setInfusionPressure = calculation<{ pressureMmHg: number }, number>({
  name: 'set-infusion-pressure',
  topic: 'Machine',
  definition: 'Infusion pressure of a machine that controls it: what was set.',
  inputs: { pressureMmHg: quantity('set infusion pressure', 'mmHg', 0, 150) },
  unit: 'mmHg',
  domain: 'Machines that control pressure, not bottle height.',
  method: 'taken as set on the machine',
  source: { citation: 'reading of the machine', status: 'common practice' },
  cautions: ['What the machine aims at; the pressure in the eye follows vacuum, flow and leaks.'],
  example: { input: { pressureMmHg: 45 }, gives: 45 },
  compute: ({ pressureMmHg }) => found(pressureMmHg),
});

export const bottleHeightForPressure = calculation<{ pressureMmHg: number }, number>({
  name: 'bottle-height-for-pressure',
  topic: 'Machine',
  definition: 'Bottle height above the eye that gives a static infusion pressure.',
  inputs: { pressureMmHg: quantity('infusion pressure', 'mmHg', 0, 150) },
  unit: 'cm',
  domain,
  method: 'pressure x 1.359510',
  source,
  cautions,
  example: { input: { pressureMmHg: 55.166935 }, gives: 75 },
  compute: ({ pressureMmHg }) => found(pressureMmHg / MMHG_PER_CMH2O),
});
