import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

const APART = 0.75;

export const predictedFarFromTarget = operationCheck({
  id: 'predicted-far-from-target',
  group: 'agreement',
  summary: 'The predicted refraction is far from the target.',
  severity: 'warning',
  allowable: true,
  run: ({ plan }, say) => {
    const [target, predicted] = [plan?.target, plan?.predicted];
    if (target === undefined || predicted === undefined) return;
    const difference = predicted.value.amount - target.value.amount;
    if (Math.abs(difference) <= APART) return;
    const sign =
      Math.abs(predicted.value.amount + target.value.amount) <= APART && target.value.amount !== 0
        ? ' Is a sign wrong?'
        : '';
    say({
      at: predicted,
      message: `Plan: the predicted ${predicted.text} is ${Math.abs(difference).toFixed(2)} D more ${difference > 0 ? 'plus' : 'minus'} than the target ${target.text}.${sign}`,
      related: [related(`the target: ${target.text}`, target)],
    });
  },
});

export const aboutPredictedFarFromTarget: About = () => ({
  why: 'The lens is chosen so that the prediction meets the target: a wide gap is a slip of the sign, of the row of the print-out, or of the lens.',
  whatToDo: 'Compare target, prediction and power with the print-out.',
  source: 'lens powers come in steps of 0.5 D, about 0.35 D of refraction; limit of 0.75 D common practice, no source',
  since: '1.0',
  faulty: { note: 'plan:\n  predicted: +1.31 D' },
  sound: { note: 'plan:\n  predicted: -0.48 D' },
});
