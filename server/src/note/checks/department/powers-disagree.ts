import { departmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const powersDisagree = departmentCheck({
  id: 'powers-disagree',
  group: 'department file',
  summary: 'The lowest power in stock is not below the highest, or the step does not lead from one to the other.',
  severity: 'error',
  allowable: false,
  run: ({ lenses }, say) => {
    for (const { powers } of lenses?.items ?? []) {
      const { from, to, step } = powers ?? {};
      if (from === undefined || to === undefined) continue;
      if (from.value.amount >= to.value.amount) {
        say({
          at: from,
          message: `Powers: ${from.text} is not below ${to.text}. Have they changed places?`,
          related: [related(`to: ${to.text}`, to)],
        });
        continue;
      }
      const steps = step === undefined ? 0 : (to.value.amount - from.value.amount) / step.value.amount;
      if (step === undefined || Math.abs(steps - Math.round(steps)) < 1e-6) continue;
      say({
        at: step,
        message: `Powers: steps of ${step.text} do not lead from ${from.text} to ${to.text}.`,
        related: [related(`from: ${from.text}`, from)],
      });
    }
  },
});

export const aboutPowersDisagree: About = () => ({
  why: 'Every power of a note would be called wrong, or none.',
  whatToDo: 'Correct from, to or step.',
  source: 'arithmetic',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    powers:\n      from: +30.0 D\n      to: -10.0 D\n      step: 0.5 D',
  },
  sound: {
    base: 'department',
    note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    powers:\n      from: -10.0 D\n      to: +30.0 D\n      step: 0.5 D',
  },
});
