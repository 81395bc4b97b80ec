import { operationCheck, type About } from '../check.ts';
import { labelDisagreement } from '../support/label.ts';
import { implantedLens } from '../support/lenses.ts';
import { related } from '../support/place.ts';

export const labelDiffersFromFields = operationCheck({
  id: 'label-differs-from-fields',
  group: 'side and identity',
  summary: 'Serial number, lot or expiry differ from those in the scanned identifier.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    const lens = implantedLens(note);
    const found = lens === undefined ? undefined : labelDisagreement(lens, note.date?.value);
    if (found === undefined || lens?.udi === undefined) return;
    say({
      at: found.field,
      message: `Lens: the ${found.name} is ${found.field.text}, but its scanned identifier says ${found.onLabel}.`,
      related: [related('the scanned identifier', lens.udi)],
    });
  },
});

export const aboutLabelDiffersFromFields: About = () => ({
  why: 'The code was made by the maker, the field was typed: when they differ, the record names a lens that is not in the eye.',
  whatToDo: 'Compare both with the label of the box, and correct the wrong one by hand.',
  source: 'FDA, UDI formats 2017; RCS Good Surgical Practice 2014, 1.3 (serial numbers of prostheses)',
  since: '1.0',
  faulty: { note: 'lens:\n  serial: "0040719110"' },
  sound: { note: 'lens:\n  serial: "0040719101"' },
});
