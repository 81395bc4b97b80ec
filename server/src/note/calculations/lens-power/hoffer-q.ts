import { tan } from '../angles.ts';
import { quantity } from '../fields.ts';
import { CITATIONS } from '../sources.ts';
import { lensFormula, MEASUREMENTS, type MeasuredEye } from './formula.ts';

export interface HofferQEye extends MeasuredEye {
  readonly pAcd: number;
}

export const PERSONAL_ACD = quantity('personalised chamber depth (pACD)', 'mm', -2, 12);
const SHORTEST = 18.5;
const LONGEST = 31;
const SHORT_BRANCH_UP_TO = 23;

function limitCautions(length: number): string[] {
  if (length > LONGEST) return [`Hoffer Q places the lens as in an eye of ${LONGEST} mm: longer eyes are its limit.`];
  if (length < SHORTEST)
    return [`Hoffer Q places the lens as in an eye of ${SHORTEST} mm: shorter eyes are its limit.`];
  return [];
}

export const hofferQ = lensFormula<HofferQEye>({
  title: 'Hoffer Q',
  slug: 'hoffer-q',
  inputs: { ...MEASUREMENTS, pAcd: PERSONAL_ACD },
  domain: 'The length that places the lens is limited to 18.5 to 31 mm; a caution says so outside.',
  method:
    'C = pACD + 0.3 (A - 23.5) + tan²K + 0.1 M (23.5 - A)² tan[0.1 (G - A)²] - 0.99166, tangents of degrees, M, G = 1, 28 up to 23 mm and -1, 23.5 above, A = L limited to 18.5 to 31 mm; position C + 0.05, corneal power K, vertex 12 mm',
  source: { citation: CITATIONS.hofferQ, status: 'from memory' },
  hyperopicInLongEyes: true,
  example: {
    eye: { axialLengthMm: 30, meanKeratometryD: 43, pAcd: 5.2 },
    targetD: -1,
    gives: 4.135613,
    powerD: 5,
    leaves: -1.554153,
    position: 6.765806,
  },
  read: ({ axialLengthMm, meanKeratometryD, pAcd }) => {
    const length = Math.min(LONGEST, Math.max(SHORTEST, axialLengthMm));
    const [m, g] = length <= SHORT_BRANCH_UP_TO ? [1, 28] : [-1, 23.5];
    const chamber =
      pAcd +
      0.3 * (length - 23.5) +
      tan(meanKeratometryD) ** 2 +
      0.1 * m * (23.5 - length) ** 2 * tan(0.1 * (g - length) ** 2) -
      0.99166;
    return {
      lensPosition: chamber + 0.05,
      opticalLength: axialLengthMm,
      cornealPower: meanKeratometryD,
      cautions: limitCautions(axialLengthMm),
    };
  },
});
