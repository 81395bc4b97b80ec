import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { has } from '../support/course.ts';
import { lengthOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';

const LONG = 27;
const SHORT = 21.5;

export const refractionSignDisagreesWithLength = operationCheck({
  id: 'refraction-sign-disagrees-with-length',
  group: 'agreement',
  summary: 'A long eye has a plus refraction, or a short eye a high minus one.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const refraction = note.preop?.refraction;
    const length = lengthOf(note);
    if (refraction === undefined || length === undefined) return;
    if (
      has(note.diagnosis?.cataract, 'pseudophakia', 'aphakia') ||
      // Oil in the eye adds several dioptres of plus.
      has(note.comorbidity, 'previous corneal refractive surgery', 'silicone oil in the eye')
    )
      return;
    const equivalent = refraction.value.sphere + refraction.value.cylinder / 2;
    const long = length.value.amount >= LONG && equivalent > 2;
    const short = length.value.amount <= SHORT && equivalent < -4;
    if (!long && !short) return;
    say({
      at: refraction,
      message: `Refraction: ${refraction.text} is unlikely in an eye of ${length.text}. Is the sign right?`,
      related: [related(`axial length: ${length.text}`, length)],
    });
  },
});

export const aboutRefractionSignDisagreesWithLength: About = () => ({
  why: 'Sphere and length go together in an eye that has its own lens: a dropped or added minus sign looks like this.',
  whatToDo: 'Compare the refraction with the glasses and the length with the print-out.',
  source: 'limits of 27 mm with more than +2 D and 21.5 mm with more than -4 D: common practice, no source',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'preop:\n  refraction: +14.25 / -0.75 x 175') },
  sound: { note: longEye },
});
