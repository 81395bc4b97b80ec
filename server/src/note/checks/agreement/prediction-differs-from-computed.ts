import { operationFacts } from '../../computing/operation-facts.ts';
import { printOutComparison } from '../../computing/values/lens-power.ts';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { dioptres } from '../support/words.ts';

/** More than the differences between constants of one lens and between programs that use one formula. */
const APART = 0.75;

export const predictionDiffersFromComputed = operationCheck({
  id: 'prediction-differs-from-computed',
  group: 'agreement',
  summary: 'The prediction is not what its formula gives for the recorded eye and lens.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { department, today }) => {
    const { plan, preop } = note;
    const power = plan?.lens?.power;
    if (plan?.predicted === undefined || power === undefined) return;
    const facts = operationFacts(note, { department, today, visits: () => [] });
    // Of a minus lens without constants of its own another check speaks.
    const entry = facts.plannedLens.ok ? facts.plannedLens.entry : undefined;
    if (power.value.amount < 0 && entry?.['minus-constants'] === undefined) return;
    const computed = printOutComparison.compute(facts)[0]?.inputs['computed'];
    if (computed?.ok !== true || typeof computed.value !== 'number') return;
    if (Math.abs(plan.predicted.value.amount - computed.value) <= APART) return;
    const { 'axial-length': length, k1, k2 } = preop?.biometry ?? {};
    say({
      at: plan.predicted,
      message: `Plan: the prediction is ${plan.predicted.text}, but ${plan['predicted-by']?.text ?? 'its formula'} gives ${dioptres(computed.value)} for ${power.text} in this eye. One of length, keratometry, power and prediction is not that of the print-out.`,
      related: [
        related(`the power: ${power.text}`, power),
        ...(length === undefined ? [] : [related(`axial length: ${length.text}`, length)]),
        ...(k1 === undefined ? [] : [related(`K1: ${k1.text}`, k1)]),
        ...(k2 === undefined ? [] : [related(`K2: ${k2.text}`, k2)]),
      ],
    });
  },
});

export const aboutPredictionDiffersFromComputed: About = () => ({
  why: 'A mistyped length, keratometry or power shows here before the operation: all of them go into the prediction.',
  whatToDo:
    'Compare each number with the biometry print-out. If all are right, the constants of the lens list differ from those of the biometer: allow the remark with that reason. The print-out and local policy decide, not this value.',
  source: 'the formula that is named, with the constants of the lens list; limit of 0.75 D common practice, no source',
  since: '1.0',
  faulty: {
    note: 'plan:\n  predicted: -0.25 D\n  predicted-by: SRK/T\n  lens:\n    power: +24.5 D\nsafety:\n  lens-verified:\n    power: +24.5 D\nlens:\n  power: +24.5 D',
    files: { 'sideport.yaml': '' },
  },
  sound: { note: 'plan:\n  predicted-by: SRK/T', files: { 'sideport.yaml': '' } },
});
