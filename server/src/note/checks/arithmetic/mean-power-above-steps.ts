import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const meanPowerAboveSteps = operationCheck({
  id: 'mean-power-above-steps',
  group: 'arithmetic',
  summary: 'The mean power is higher than the power limit of every step.',
  severity: 'warning',
  allowable: true,
  run: ({ nucleus }, say) => {
    const mean = nucleus?.['mean-power'];
    const steps = nucleus?.steps?.items ?? [];
    const powers = steps.flatMap(({ power }) => (power === undefined ? [] : [power]));
    // A step without its power may have been the strongest.
    if (mean === undefined || powers.length === 0 || powers.length < steps.length) return;
    const most = powers.reduce((a, b) => (b.value.amount > a.value.amount ? b : a));
    if (mean.value.amount <= most.value.amount) return;
    say({
      at: mean,
      message: `Ultrasound: the mean power is ${mean.text}, but no step went above ${most.text}.`,
      related: [related(`the strongest step: ${most.text}`, most)],
    });
  },
});

export const aboutMeanPowerAboveSteps: About = () => ({
  why: 'A mean cannot be above the highest limit: a digit of one of them is wrong.',
  whatToDo: 'Compare with the display of the machine.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'nucleus:\n  mean-power: 80 %' },
  sound: { note: 'nucleus:\n  mean-power: 28 %' },
});
