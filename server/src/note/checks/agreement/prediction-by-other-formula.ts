import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { listed } from '../support/words.ts';

export const predictionByOtherFormula = operationCheck({
  id: 'prediction-by-other-formula',
  group: 'agreement',
  summary: 'The prediction is by a formula that the plan does not name.',
  severity: 'warning',
  allowable: true,
  run: ({ plan }, say) => {
    const [by, formula] = [plan?.['predicted-by'], plan?.formula];
    if (by === undefined || formula === undefined || formula.items.length === 0) return;
    if (formula.items.some(({ value }) => value === by.value)) return;
    const named = listed(formula.items.map(({ value }) => value));
    say({
      at: by,
      message: `Plan: the prediction is by ${by.text}, but the lens was chosen with ${named}.`,
      related: [related(`formula: ${named}`, formula.$)],
    });
  },
});

export const aboutPredictionByOtherFormula: About = () => ({
  why: 'The prediction error is later computed and counted for this formula.',
  whatToDo: 'Correct “predicted-by”, or add the formula to the plan.',
  source: 'Hoffer et al., Am J Ophthalmol 2015;160:403-5 (report the formula)',
  since: '1.0',
  faulty: { note: 'plan:\n  predicted-by: Hoffer Q' },
  sound: { note: 'plan:\n  predicted-by: SRK/T' },
});
