import { operationCheck, type About } from '../check.ts';
import { differsFromVerified, isOtherLens } from '../support/lenses.ts';
import { related } from '../support/place.ts';

export const cylinderDiffersFromPlan = operationCheck({
  id: 'cylinder-differs-from-plan',
  group: 'agreement',
  summary: 'The toric lens has another cylinder than planned, and no reason is given.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const [planned, cylinder] = [note.plan?.lens?.cylinder, note.lens?.cylinder];
    if (planned === undefined || cylinder === undefined || note.lens?.['changed-because'] !== undefined) return;
    if (planned.value.amount === cylinder.value.amount || differsFromVerified(note) || isOtherLens(note)) return;
    say({
      at: cylinder,
      message: `Cylinder: ${cylinder.text} was implanted, but ${planned.text} was planned, and no reason is given.`,
      related: [related(`planned: ${planned.text}`, planned)],
    });
  },
});

const toric = (cylinder: string): string =>
  `preop:\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88\nplan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 88°\nlens:\n  kind: toric\n  cylinder: ${cylinder}\n  axis: 88°`;

export const aboutCylinderDiffersFromPlan: About = () => ({
  why: 'Either the lens was changed on purpose, and then the reason belongs in the record, or a wrong lens is in the eye.',
  whatToDo: 'Compare both with the label of the box. If it was changed on purpose, say why in “changed-because”.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: toric('+3.75 D') },
  sound: { note: toric('+3.00 D') },
});
