import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { listedLens } from '../support/department-lens.ts';
import { lensInDoubt } from '../support/lenses.ts';
import { inDepartment } from '../support/place.ts';

const minus = composeNote(
  longEye,
  'preop:\n  biometry:\n    axial-length: 33.50 mm\n  fellow-eye:\n    axial-length: 33.41 mm\nplan:\n  lens:\n    model: HT-3\n    power: -2.0 D\n  spare-lens:\n    power: -2.5 D\nsafety:\n  lens-verified:\n    model: HT-3\n    power: -2.0 D\nlens:\n  model: HT-3\n  pieces: 3\n  power: -2.0 D\n  udi: not recorded',
);

export const minusLensWithoutOwnConstants = operationCheck({
  id: 'minus-lens-without-own-constants',
  group: 'plausibility',
  summary: 'A minus power was chosen, but the list has no constants for minus powers of this lens.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { department } = context;
    if (lensInDoubt(note)) return;
    const lens = note.plan?.lens ?? note.lens;
    const listed = listedLens(department, lens);
    if (lens?.power === undefined || lens.power.value.amount >= 0 || listed === undefined) return;
    if (listed['minus-constants'] !== undefined || listed.constants === undefined) return;
    say({
      at: lens.power,
      message: `Power: ${lens.power.text} is a minus power, but the list of the department has only the constants for plus powers of ${lens.model?.text ?? 'this lens'}.`,
      related: inDepartment('the constants of the list', listed.constants.$, context),
    });
  },
});

export const aboutMinusLensWithoutOwnConstants: About = () => ({
  why: 'Constants of plus lenses do not hold for minus lenses; the eye is left hyperopic.',
  whatToDo: 'Ask for the published constants for minus powers and add them to the list, or aim more myopic and say so.',
  source: 'Haigis, J Cataract Refract Surg 2009;35:906-11 (as quoted)',
  since: '1.0',
  faulty: { note: minus, files: { 'sideport.yaml': '' } },
  sound: { note: minus },
});
