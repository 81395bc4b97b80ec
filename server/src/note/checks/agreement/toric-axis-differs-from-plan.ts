import { meridianDifference } from '../../calculations/angles.ts';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const ASK_FROM = 5;

export const toricAxisDiffersFromPlan = operationCheck({
  id: 'toric-axis-differs-from-plan',
  group: 'agreement',
  summary: 'The toric lens was left on another axis than planned.',
  severity: 'warning',
  allowable: true,
  run: ({ plan, lens }, say) => {
    const [planned, axis] = [plan?.lens?.axis, lens?.axis];
    if (planned === undefined || axis === undefined || lens?.['changed-because'] !== undefined) return;
    const off = Math.abs(meridianDifference(axis.value.amount, planned.value.amount));
    if (off <= ASK_FROM) return;
    say({
      at: axis,
      message: `Toric lens: it lies at ${axis.text}, but ${planned.text} was planned, ${rounded(off, 0)}° away.`,
      related: [related(`planned: ${planned.text}`, planned)],
    });
  },
});

export const aboutToricAxisDiffersFromPlan: About = () => ({
  why: 'Ten degrees cost a third of the effect when lens and cornea match.',
  whatToDo:
    'Compare both with the print-out and the marks. If it was left there on purpose, say why in “changed-because”.',
  source: 'Felipe et al., J Cataract Refract Surg 2011 (effect of rotation); limit of 5° common practice, no source',
  since: '1.0',
  faulty: {
    note: 'preop:\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88\nplan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 88°\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 78°',
  },
  sound: {
    note: 'preop:\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88\nplan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 88°\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 90°',
  },
});
