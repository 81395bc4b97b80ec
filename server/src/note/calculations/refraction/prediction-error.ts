import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

export const predictionError = calculation<{ achievedD: number; predictedD: number }, number>({
  name: 'prediction-error',
  topic: 'Refraction',
  definition: 'Achieved minus predicted spherical equivalent; minus is more myopic than predicted.',
  inputs: {
    achievedD: quantity('achieved spherical equivalent', 'D', -40, 25),
    predictedD: quantity('predicted spherical equivalent', 'D', -40, 25),
  },
  unit: 'D',
  domain: 'Predicted for the lens IMPLANTED, by the formula and constant that were used; the target is another thing.',
  method: 'achieved - predicted',
  source: { citation: CITATIONS.hoffer2015, status: 'seen' },
  example: { input: { achievedD: -1, predictedD: -0.3 }, gives: -0.7 },
  compute: ({ achievedD, predictedD }) => found(achievedD - predictedD),
});
