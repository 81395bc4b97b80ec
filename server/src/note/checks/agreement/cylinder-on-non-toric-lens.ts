import { operationCheck, type About } from '../check.ts';
import { isToric } from '../support/course.ts';
import { related } from '../support/place.ts';

export const cylinderOnNonToricLens = operationCheck({
  id: 'cylinder-on-non-toric-lens',
  group: 'agreement',
  summary: 'A lens that is not toric has a cylinder or an axis.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    for (const lens of [note.plan?.lens, note.lens]) {
      const extra = lens?.cylinder ?? lens?.axis;
      if (
        lens?.kind === undefined ||
        extra === undefined ||
        isToric(lens.kind.value) ||
        lens.cylinder?.value.amount === 0
      )
        continue;
      say({
        at: extra,
        message: `Lens: it is recorded as ${lens.kind.text}, but has ${lens.cylinder === undefined ? 'an axis' : 'a cylinder'} of ${extra.text}.`,
        related: [related(`kind: ${lens.kind.text}`, lens.kind)],
      });
    }
  },
});

export const aboutCylinderOnNonToricLens: About = () => ({
  why: 'One of the two is wrong: the kind, or a number that belongs to another lens.',
  whatToDo: 'Compare with the label of the box.',
  source: 'ISO 11979-2 (toric lenses; from memory)',
  since: '1.0',
  faulty: { note: 'lens:\n  cylinder: +3.00 D' },
  sound: {
    note: 'plan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 88°\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 88°',
  },
});
