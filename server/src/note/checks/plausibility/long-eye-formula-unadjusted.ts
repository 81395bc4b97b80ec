import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { longLength } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { listed } from '../support/words.ts';

const LEAVE_HYPEROPIC = ['SRK/T', 'Holladay 1', 'Hoffer Q', 'T2'];

export const longEyeFormulaUnadjusted = operationCheck({
  id: 'long-eye-formula-unadjusted',
  group: 'plausibility',
  summary: 'In a long eye the lens was chosen with an older formula alone, without adjusting the length.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const formulas = note.plan?.formula;
    const adjustment = note.plan?.['length-adjustment'];
    const length = longLength(note, context);
    if (formulas === undefined || length === undefined || formulas.items.length === 0) return;
    if (adjustment !== undefined && adjustment.value !== 'none') return;
    if (!formulas.items.every(({ value }) => LEAVE_HYPEROPIC.includes(value))) return;
    say({
      at: formulas.$,
      message: `Plan: ${listed(formulas.items.map(({ value }) => value))} without an adjusted length tends to leave an eye of ${length.text} hyperopic. Was that allowed for?`,
      related: [related(`axial length: ${length.text}`, length)],
    });
  },
});

export const aboutLongEyeFormulaUnadjusted: About = () => ({
  why: 'In eyes over 26 mm these formulas leave the eye hyperopic on average.',
  whatToDo:
    'Compare with the adjusted length or another formula before the operation; afterwards the record is what it is: allow the remark.',
  source: 'Abulafia et al., J Cataract Refract Surg 2015;41 (eyes over 26 mm); Wang et al. 2011;37:2018-27',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'plan:\n  formula: [Hoffer Q]\n  predicted-by: Hoffer Q') },
  sound: {
    note: composeNote(
      longEye,
      'plan:\n  formula: [Hoffer Q]\n  predicted-by: Hoffer Q\n  length-adjustment: Wang-Koch 2018',
    ),
  },
});
