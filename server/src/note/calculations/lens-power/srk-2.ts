import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';
import { AXIAL_LENGTH, MEAN_KERATOMETRY } from './formula.ts';
import { A_CONSTANT, type SrkTEye } from './srk-t.ts';

function correctionForLength(length: number): number {
  if (length < 20) return 3;
  if (length < 21) return 2;
  if (length < 22) return 1;
  return length < 24.5 ? 0 : -0.5;
}

export const srk2 = calculation<Omit<SrkTEye, 'lengthAdjusted' | 'constantForMinus'> & { targetD: number }, number>({
  name: 'lens-power-srk-2',
  topic: 'Lens power',
  definition: 'Lens power of the SRK II regression; kept for reading old records.',
  inputs: {
    axialLengthMm: AXIAL_LENGTH,
    meanKeratometryD: MEAN_KERATOMETRY,
    aConstant: A_CONSTANT,
    targetD: quantity('target refraction', 'D', -20, 10),
  },
  unit: 'D',
  domain: 'A straight-line regression in steps of axial length; it jumps at 20, 21, 22 and 24.5 mm.',
  method:
    'P = A1 - 2.5 L - 0.9 K - CR x target; A1 = A + 3 below 20 mm, + 2 below 21, + 1 below 22, + 0 below 24.5, else - 0.5; CR 1.25 above 14 D, else 1',
  source: { citation: CITATIONS.srk, status: 'from memory' },
  cautions: ['Superseded: for comparison with old records only, not for choosing a lens.'],
  example: {
    input: { axialLengthMm: 23.5, meanKeratometryD: 43.5, aConstant: 118.4, targetD: 0 },
    gives: 20.5,
  },
  compute: ({ axialLengthMm, meanKeratometryD, aConstant, targetD }) => {
    const emmetropia = aConstant + correctionForLength(axialLengthMm) - 2.5 * axialLengthMm - 0.9 * meanKeratometryD;
    return found(emmetropia - (emmetropia > 14 ? 1.25 : 1) * targetD);
  },
});
