import { operationCheck, type About } from '../check.ts';
import { labelDisagreements } from '../support/label.ts';
import { implantedLens } from '../support/lenses.ts';
import { related } from '../support/place.ts';
import { listed } from '../support/words.ts';

export const labelDiffersFromFields = operationCheck({
  id: 'label-differs-from-fields',
  group: 'side and identity',
  summary: 'Serial number, lot or expiry differ from those in the scanned identifier.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    const lens = implantedLens(note);
    const [first, ...others] = lens === undefined ? [] : labelDisagreements(lens, note.date?.value);
    if (first === undefined || lens?.udi === undefined) return;
    const found = [first, ...others];
    const written = found.map(({ name, field }, at) => `the ${name} ${at === 0 ? 'is ' : ''}${field.text}`);
    say({
      at: first.field,
      message: `Lens: ${listed(written)}, but its scanned identifier says ${listed(found.map(({ onLabel }) => onLabel))}.`,
      related: [
        related('the scanned identifier', lens.udi),
        ...others.map(({ name, field }) => related(`the ${name}: ${field.text}`, field)),
      ],
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
