import { operationCheck, type About } from '../check.ts';
import { differs, differsFromVerified, implantedLens, isOtherLens, plannedLens, samePower } from '../support/lenses.ts';
import { related } from '../support/place.ts';

export const implantedPowerDiffersFromPlan = operationCheck({
  id: 'implanted-power-differs-from-plan',
  group: 'agreement',
  summary: 'The power implanted is not the power planned, and no reason is given.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const [lens, planned] = [implantedLens(note), plannedLens(note)];
    if (lens?.power === undefined || planned?.power === undefined || lens['changed-because'] !== undefined) return;
    if (!differs(planned.power, lens.power, samePower) || differsFromVerified(note) || isOtherLens(note)) return;
    const opposite = planned.power.value.amount === -lens.power.value.amount ? ' Only the sign differs.' : '';
    say({
      at: lens.power,
      message: `Power: ${lens.power.text} was implanted, but ${planned.power.text} was planned, and no reason is given.${opposite}`,
      related: [related(`planned: ${planned.power.text}`, planned.power)],
    });
  },
});

export const aboutImplantedPowerDiffersFromPlan: About = () => ({
  why: 'Either the power was changed on purpose, and then the reason belongs in the record, or a wrong lens is in the eye.',
  whatToDo:
    'Compare both with the biometry print-out and the label of the box. If the power was changed on purpose, say why in “changed-because”.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: 'plan:\n  lens:\n    power: +22.5 D' },
  sound: {
    note: 'plan:\n  lens:\n    power: +22.5 D\nlens:\n  changed-because: biometry repeated on the morning of the operation',
  },
});
