import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { longLength } from '../support/measurements.ts';
import { headOf, related } from '../support/place.ts';
import { isWritten } from '../support/written.ts';

export const longEyePeripheryNotExamined = operationCheck({
  id: 'long-eye-periphery-not-examined',
  group: 'sequence and consequence',
  summary: 'In a long eye the peripheral retina was not examined before the operation, or nothing is recorded of it.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const length = longLength(note, context);
    const fundus = note.preop?.fundus;
    if (length === undefined || fundus === undefined || fundus.view?.value === 'no view') return;
    const said = fundus.$.said['periphery'];
    if (
      said === undefined &&
      (fundus.periphery !== undefined || isWritten(context.reading, ['preop', 'fundus', 'periphery']))
    )
      return;
    say({
      at: said ?? headOf(fundus.$, context),
      message: `Fundus: the peripheral retina ${said?.word === 'not done' ? 'was not examined' : 'is not recorded'} in an eye of ${length.text}.`,
      related: [related(`axial length: ${length.text}`, length)],
    });
  },
});

export const aboutLongEyePeripheryNotExamined: About = () => ({
  why: 'Lattice, holes and tears are common in long eyes and can be treated before.',
  whatToDo: 'Record the periphery. Where it cannot be seen, write “view: no view”.',
  source: 'common practice, no source; Laube 2017, PLoS One (detachment after operations on long eyes)',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'preop:\n  fundus:\n    periphery: not done') },
  sound: { note: composeNote(longEye, 'preop:\n  fundus:\n    periphery: [lattice]') },
});
