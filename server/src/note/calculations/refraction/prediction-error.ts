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

/** Beyond this the two should be looked at side by side; common practice. */
const WORTH_A_LOOK_D = 0.25;

export const predictionDifference = calculation<{ recordedD: number; computedD: number }, number>({
  name: 'prediction-difference',
  topic: 'Lens power',
  definition: 'Prediction recorded from the biometer minus the one computed here by the same formula.',
  inputs: {
    recordedD: quantity('recorded prediction', 'D', -40, 25),
    computedD: quantity('computed prediction', 'D', -40, 25),
  },
  unit: 'D',
  domain: 'Same formula, same lens power. The recorded prediction is compared, never replaced.',
  method: 'recorded - computed',
  source: { citation: 'arithmetic', status: 'derived' },
  example: { input: { recordedD: -2.61, computedD: -2.5 }, gives: -0.11 },
  compute: ({ recordedD, computedD }) => {
    const difference = recordedD - computedD;
    return found(
      difference,
      Math.abs(difference) > WORTH_A_LOOK_D
        ? ['They differ by over 0.25 D: compare length, keratometry, constant and lens power with the print-out.']
        : [],
    );
  },
});

export const differenceFromTarget = calculation<{ achievedD: number; targetD: number }, number>({
  name: 'difference-from-target',
  topic: 'Refraction',
  definition: 'Achieved spherical equivalent minus the target; minus is more myopic than wanted.',
  inputs: {
    achievedD: quantity('achieved spherical equivalent', 'D', -40, 25),
    targetD: quantity('target refraction', 'D', -20, 10),
  },
  unit: 'D',
  domain: 'Says whether the patient got what was wanted; whether the prediction was good is the prediction error.',
  method: 'achieved - target',
  source: { citation: 'arithmetic', status: 'derived' },
  example: { input: { achievedD: -1, targetD: -0.5 }, gives: -0.5 },
  compute: ({ achievedD, targetD }) => found(achievedD - targetD),
});
