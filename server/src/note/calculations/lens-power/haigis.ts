import { quantity } from '../fields.ts';
import { CITATIONS } from '../sources.ts';
import { lensFormula, MEASUREMENTS, type MeasuredEye } from './formula.ts';

export interface HaigisEye extends MeasuredEye {
  /** Measured from the front of the cornea to the front of the lens, mm. */
  readonly chamberDepthMm: number;
  readonly a0: number;
  readonly a1: number;
  readonly a2: number;
}

/** The formula's own defaults, where only a0 is known. */
export const HAIGIS_A1 = 0.4;
export const HAIGIS_A2 = 0.1;
export const CHAMBER_DEPTH = quantity('anterior chamber depth', 'mm', 1, 6.5);
export const A0 = quantity('a0', 'mm', -12, 12);

export const haigis = lensFormula<HaigisEye>({
  title: 'Haigis',
  slug: 'haigis',
  inputs: {
    ...MEASUREMENTS,
    chamberDepthMm: CHAMBER_DEPTH,
    a0: A0,
    a1: quantity('a1', '', -2, 2),
    a2: quantity('a2', '', -1, 1),
  },
  domain:
    'Needs the measured chamber depth, from the front of the cornea, and its own constants; a depth is never supposed.',
  method: 'position a0 + a1 ACD + a2 L, corneal power 331.5/r, length unadjusted, vertex 12 mm',
  source: { citation: CITATIONS.haigis2000, status: 'from memory' },
  hyperopicInLongEyes: false,
  example: {
    eye: { axialLengthMm: 30, meanKeratometryD: 43, chamberDepthMm: 3.6, a0: 1.527, a1: 0.4, a2: 0.1 },
    targetD: -1,
    gives: 5.028047,
    powerD: 5,
    leaves: -0.98089,
    position: 5.967,
  },
  read: ({ axialLengthMm, meanKeratometryD, chamberDepthMm, a0, a1, a2 }) => ({
    lensPosition: a0 + a1 * chamberDepthMm + a2 * axialLengthMm,
    opticalLength: axialLengthMm,
    cornealPower: (331.5 * meanKeratometryD) / 337.5,
    cautions: [],
  }),
});
