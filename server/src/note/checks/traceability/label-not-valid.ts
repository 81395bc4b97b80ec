import { operationCheck, type About } from '../check.ts';
import { labelOf } from '../support/label.ts';
import { implantedLens } from '../support/lenses.ts';
import { small } from '../support/words.ts';

export const labelNotValid = operationCheck({
  id: 'label-not-valid',
  group: 'traceability',
  summary: 'The scanned or typed identifier of the lens does not pass its own check.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const lens = implantedLens(note);
    if (lens?.udi === undefined) return;
    const faults = labelOf(lens, note.date?.value)?.faults ?? [];
    const worst = faults.find(({ severity }) => severity === 'error') ?? faults[0];
    if (worst === undefined) return;
    say({ at: lens.udi, severity: worst.severity, message: `Lens label: ${small(worst.message)}` });
  },
});

export const aboutLabelNotValid: About = () => ({
  why: 'A code with a wrong digit points to another lens, or to none.',
  whatToDo: 'Scan the code again, or compare it with the line marked UDI on the box.',
  source: 'GS1 General Specifications (check digit, application identifiers); ANSI/HIBC supplier labelling',
  since: '1.0',
  faulty: { note: 'lens:\n  udi: (01)09521234543218(17)340630(10)L2031B(21)0040719101' },
  sound: { note: 'lens:\n  udi: (01)09521234543213(17)340630(10)L2031B(21)0040719101' },
});
