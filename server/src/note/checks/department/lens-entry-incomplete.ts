import { departmentCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf } from '../support/place.ts';
import { listed } from '../support/words.ts';

const wanted = [
  ['maker', 'the maker'],
  ['model', 'the model'],
  ['kind', 'the kind'],
  ['optic-diameter', 'the diameter of the optic'],
] as const;

export const lensEntryIncomplete = departmentCheck({
  id: 'lens-entry-incomplete',
  group: 'department file',
  summary: 'A listed lens has no maker, model, kind or optic.',
  severity: 'warning',
  allowable: true,
  run: ({ lenses }, say, context) => {
    for (const lens of lenses?.items ?? []) {
      const missing = missingIn(lens, wanted, context);
      if (missing.length > 0)
        say({
          at: lens.model ?? headOf(lens.$, context),
          message: `Lenses: ${lens.model?.text ?? 'one entry'} lacks ${listed(missing)}.`,
        });
    }
  },
});

export const aboutLensEntryIncomplete: About = () => ({
  why: 'Notes are completed and compared from this list.',
  whatToDo: 'Copy what is missing from the maker’s sheet.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { base: 'department', note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal' },
  sound: {
    base: 'department',
    note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm',
  },
});
