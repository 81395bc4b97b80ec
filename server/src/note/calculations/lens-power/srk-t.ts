import { quantity } from '../fields.ts';
import { CITATIONS } from '../sources.ts';
import { lensFormula, MEASUREMENTS, type MeasuredEye, type Reading } from './formula.ts';

export interface SrkTEye extends MeasuredEye {
  readonly aConstant: number;
}

export const A_CONSTANT = quantity('A constant', '', 100, 130);

/** The distance from cornea to lens (mm) that the A constant stands for. */
export const chamberConstantOfA = (aConstant: number): number => 0.62467 * aConstant - 68.747;

/** The optics that SRK/T and T2 share: corneal power 333 / r and the retina's thickness added to the length. */
export function srkOptics(eye: SrkTEye, cornealHeight: number, cautions: readonly string[]): Reading {
  const { axialLengthMm, meanKeratometryD, aConstant } = eye;
  return {
    lensPosition: cornealHeight + chamberConstantOfA(aConstant) - 3.336,
    opticalLength: axialLengthMm + 0.65696 - 0.02029 * axialLengthMm,
    cornealPower: (333 * meanKeratometryD) / 337.5,
    cautions,
  };
}

const LINEAR_UP_TO = 24.2;
const CLAMPED =
  'Long and steep: the corneal height of SRK/T is clamped here, so its power is not reliable; use another formula.';

export const srkT = lensFormula<SrkTEye>({
  title: 'SRK/T',
  slug: 'srk-t',
  inputs: { ...MEASUREMENTS, aConstant: A_CONSTANT },
  domain: 'Keratometry with index 1.3375. In long steep eyes the corneal height is clamped; a caution says so.',
  method:
    'corrected length (L up to 24.2 mm; -3.446 + 1.716 L - 0.0237 L² above), corneal width -5.41 + 0.58412 LCOR + 0.098 K, corneal height r - √(r² - Cw²/4), position = height + 0.62467 A - 68.747 - 3.336, length L + 0.65696 - 0.02029 L, corneal power 333/r, vertex 12 mm',
  source: { citation: CITATIONS.srkT, status: 'from memory' },
  hyperopicInLongEyes: true,
  example: {
    eye: { axialLengthMm: 30, meanKeratometryD: 43, aConstant: 118.4 },
    targetD: -1,
    gives: 4.873366,
    powerD: 5,
    leaves: -1.082119,
    position: 6.604684,
  },
  read: (eye) => {
    const { axialLengthMm: length, meanKeratometryD: keratometry } = eye;
    const corrected = length <= LINEAR_UP_TO ? length : -3.446 + 1.716 * length - 0.0237 * length * length;
    const width = -5.41 + 0.58412 * corrected + 0.098 * keratometry;
    const radius = 337.5 / keratometry;
    const underRoot = radius * radius - (width * width) / 4;
    const height = radius - Math.sqrt(Math.max(0, underRoot));
    return srkOptics(eye, height, underRoot < 0 ? [CLAMPED] : []);
  },
});
