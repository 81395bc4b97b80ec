import { operationCheck, type About } from '../check.ts';
import { lensToHold, listedLens } from '../support/department-lens.ts';
import { lensInDoubt } from '../support/lenses.ts';
import { inDepartment } from '../support/place.ts';
import { rounded } from '../support/words.ts';

export const powerNotMade = operationCheck({
  id: 'power-not-made',
  group: 'agreement',
  summary: 'The power is not one in which this lens is in stock.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { department } = context;
    if (lensInDoubt(note)) return;
    const lens = lensToHold(note);
    const powers = listedLens(department, lens)?.powers;
    if (lens?.power === undefined || powers?.from === undefined || powers.to === undefined) return;
    const power = lens.power.value.amount;
    const [from, to, step] = [powers.from.value.amount, powers.to.value.amount, powers.step?.value.amount];
    const outside = power < from || power > to;
    const steps = step === undefined ? 0 : (power - from) / step;
    if (!outside && Math.abs(steps - Math.round(steps)) < 1e-6) return;
    const range = `${powers.from.text} to ${powers.to.text}`;
    say({
      at: lens.power,
      message: `Power: ${lens.power.text} is not a power of ${lens.model?.text ?? 'this lens'}: ${range}${step === undefined ? '' : ` in steps of ${rounded(step, 3)} D`}.`,
      related: inDepartment(`in stock: ${range}`, powers.from, context),
    });
  },
});

export const aboutPowerNotMade: About = () => ({
  why: 'A power between the steps or beyond the range is a slip of a digit or of the model.',
  whatToDo: 'Compare power and model with the label of the box.',
  source: 'IOL quality standard (RCOphth and UKOA 2018); steps as the department lists them',
  since: '1.0',
  faulty: {
    note: 'plan:\n  lens:\n    power: +21.7 D\nsafety:\n  lens-verified:\n    power: +21.7 D\nlens:\n  power: +21.7 D',
    files: { 'sideport.yaml': '' },
  },
  sound: { note: 'lens:\n  power: +21.5 D', files: { 'sideport.yaml': '' } },
});
