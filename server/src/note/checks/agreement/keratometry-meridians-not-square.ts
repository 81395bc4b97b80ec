import { awayFromSquare } from '../../calculations/keratometry/meridians.ts';
import { operationCheck, type About } from '../check.ts';
import { isNotSquare, keratometryOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

export const keratometryMeridiansNotSquare = operationCheck({
  id: 'keratometry-meridians-not-square',
  group: 'agreement',
  summary: 'The two meridians of the keratometry are not at right angles.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const biometry = note.preop?.biometry;
    const keratometry = keratometryOf(biometry);
    if (keratometry === undefined || biometry?.k1 === undefined || biometry.k2 === undefined) return;
    if (!isNotSquare(biometry)) return;
    const off = awayFromSquare(keratometry);
    say({
      at: biometry.k2,
      message: `Keratometry: the meridians of ${biometry.k1.text} and ${biometry.k2.text} are ${rounded(90 - off, 0)}° apart instead of 90°. Is an axis mistyped?`,
      related: [related(`K1: ${biometry.k1.text}`, biometry.k1)],
    });
  },
});

export const aboutKeratometryMeridiansNotSquare: About = () => ({
  why: 'Principal meridians are 90° apart unless the cornea is irregular: an axis was probably mistyped, and every astigmatism computed from it is wrong.',
  whatToDo:
    'Compare both axes with the print-out. If the cornea is irregular, say so and do not plan an astigmatism correction from it.',
  source: 'keratometry convention; tolerance of 10° common practice, no source',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    k2: 43.75 D @ 68' },
  sound: { note: 'preop:\n  biometry:\n    k2: 43.75 D @ 85' },
});
