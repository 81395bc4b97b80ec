import { calculation } from '../calculation.ts';
import { optional, quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';
import { AXIAL_LENGTH, MEAN_KERATOMETRY } from './formula.ts';

interface Measurements {
  readonly axialLengthMm: number;
  readonly meanKeratometryD: number;
  readonly fellowAxialLengthMm?: number;
  readonly fellowMeanKeratometryD?: number;
}

export const repeatPrompts = calculation<Measurements, readonly string[]>({
  name: 'biometry-to-repeat',
  topic: 'Lens power',
  definition: 'Reasons to measure again before choosing a lens.',
  inputs: {
    axialLengthMm: AXIAL_LENGTH,
    meanKeratometryD: MEAN_KERATOMETRY,
    fellowAxialLengthMm: optional(quantity('axial length of the other eye', 'mm', 14, 40)),
    fellowMeanKeratometryD: optional(quantity('mean keratometry of the other eye', 'D', 30, 60)),
  },
  unit: '',
  domain: 'Prompts, not errors: an eye of 30 mm is real.',
  method: 'axial length outside 22-25 mm, keratometry outside 40-47 D, eyes differing by over 0.3 mm or over 1 D',
  source: { citation: CITATIONS.holladay1988, status: 'from memory' },
  example: {
    input: { axialLengthMm: 30, meanKeratometryD: 43 },
    gives: ['axial length outside 22 to 25 mm'],
  },
  compute: ({ axialLengthMm, meanKeratometryD, fellowAxialLengthMm, fellowMeanKeratometryD }) => {
    const prompts: string[] = [];
    if (axialLengthMm < 22 || axialLengthMm > 25) prompts.push('axial length outside 22 to 25 mm');
    if (meanKeratometryD < 40 || meanKeratometryD > 47) prompts.push('keratometry outside 40 to 47 D');
    if (fellowAxialLengthMm !== undefined && Math.abs(axialLengthMm - fellowAxialLengthMm) > 0.3)
      prompts.push('axial length differs from the other eye by over 0.3 mm');
    if (fellowMeanKeratometryD !== undefined && Math.abs(meanKeratometryD - fellowMeanKeratometryD) > 1)
      prompts.push('keratometry differs from the other eye by over 1 D');
    return found<readonly string[]>(prompts);
  },
});
