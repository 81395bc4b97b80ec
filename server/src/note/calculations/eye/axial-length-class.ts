import { calculation } from '../calculation.ts';
import { found } from '../outcome.ts';
import { AXIAL_LENGTH } from '../lens-power/formula.ts';

export type AxialLengthClass = 'short' | 'average' | 'medium long' | 'long' | 'extreme';

function classOf(length: number): AxialLengthClass {
  if (length < 22) return 'short';
  if (length <= 24.5) return 'average';
  if (length <= 26) return 'medium long';
  return length <= 30 ? 'long' : 'extreme';
}

export const axialLengthClass = calculation<{ axialLengthMm: number }, AxialLengthClass>({
  name: 'axial-length-class',
  topic: 'Eye',
  definition: 'How long the eye is, in words.',
  inputs: { axialLengthMm: AXIAL_LENGTH },
  unit: '',
  domain: 'Cut-offs differ between papers; these are stated with the value.',
  method: 'short below 22 mm, average to 24.5, medium long to 26, long to 30, extreme above',
  source: { citation: 'usual cut-offs', status: 'common practice' },
  example: { input: { axialLengthMm: 29.6 }, gives: 'long' },
  compute: ({ axialLengthMm }) => found(classOf(axialLengthMm)),
});
