import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found } from '../outcome.ts';

export const meanKeratometry = calculation<{ k1D: number; k2D: number }, number>({
  name: 'mean-keratometry',
  topic: 'Keratometry',
  definition: 'Mean power of the two principal meridians of the cornea.',
  inputs: { k1D: quantity('K1', 'D', 30, 70), k2D: quantity('K2', 'D', 30, 70) },
  unit: 'D',
  domain: 'Both powers under the same keratometric index. The mean is taken in dioptres, never in millimetres.',
  method: '(K1 + K2) / 2 in dioptres',
  source: { citation: 'arithmetic; keratometer convention', status: 'derived' },
  example: { input: { k1D: 42.5, k2D: 44 }, gives: 43.25 },
  compute: ({ k1D, k2D }) => found((k1D + k2D) / 2),
});
