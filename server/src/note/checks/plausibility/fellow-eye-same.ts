import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const fellowEyeSame = operationCheck({
  id: 'fellow-eye-same',
  group: 'plausibility',
  summary: 'The two eyes have exactly the same measurements.',
  severity: 'warning',
  allowable: true,
  run: ({ preop }, say) => {
    const { biometry, 'fellow-eye': fellow } = preop ?? {};
    const length = fellow?.['axial-length'];
    if (length === undefined || biometry?.['axial-length'] === undefined) return;
    const same = [
      [length, biometry['axial-length']],
      [fellow?.k1, biometry.k1],
      [fellow?.k2, biometry.k2],
    ].every(([a, b]) => a !== undefined && b !== undefined && a.text === b.text);
    if (!same) return;
    say({
      at: length,
      message: `Biometry: length and keratometry of the fellow eye are those of this eye to the last digit (${length.text}). Was a column copied twice?`,
      related: [related('this eye', biometry['axial-length'])],
    });
  },
});

export const aboutFellowEyeSame: About = () => ({
  why: 'No two eyes agree in length and both meridians: a column of the print-out was copied twice.',
  whatToDo: 'Copy the right column for each eye.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'preop:\n  fellow-eye:\n    axial-length: 23.61 mm\n    k1: 43.00 D @ 178\n    k2: 43.75 D @ 88' },
  sound: { note: 'preop:\n  fellow-eye:\n    axial-length: 23.61 mm\n    k1: 43.12 D @ 5\n    k2: 43.62 D @ 95' },
});
