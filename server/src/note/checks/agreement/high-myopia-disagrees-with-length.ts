import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { has } from '../support/course.ts';
import { lengthOf, longFrom } from '../support/measurements.ts';
import { related } from '../support/place.ts';

const NOT_LONG = 24;
const HIGH_MINUS = -6;

export const highMyopiaDisagreesWithLength = operationCheck({
  id: 'high-myopia-disagrees-with-length',
  group: 'agreement',
  summary: 'A long eye is not listed as highly myopic, or an eye of usual length is.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const length = lengthOf(note);
    if (length === undefined) return;
    const myopia = has(note.comorbidity, 'high myopia', 'myopic maculopathy');
    const said = note.$.said['comorbidity'];
    if (length.value.amount >= longFrom(context) && myopia === undefined) {
      const at = note.comorbidity?.$ ?? (said?.word === 'none' ? said : undefined);
      if (at === undefined) return;
      say({
        at,
        message: `Comorbidity: high myopia is not listed, although the eye is ${length.text} long.`,
        related: [related(`axial length: ${length.text}`, length)],
      });
    }
    const refraction = note.preop?.refraction;
    const minus = refraction !== undefined && refraction.value.sphere + refraction.value.cylinder / 2 <= HIGH_MINUS;
    if (length.value.amount < NOT_LONG && myopia?.value === 'high myopia' && !minus) {
      say({
        at: myopia,
        message: `Comorbidity: high myopia is listed, but the eye is ${length.text} long. Is one of them a slip?`,
        related: [related(`axial length: ${length.text}`, length)],
      });
    }
  },
});

export const aboutHighMyopiaDisagreesWithLength: About = () => ({
  why: 'High myopia is a risk factor in every model of capsule rupture and retinal detachment.',
  whatToDo: 'Compare the length with the print-out, and correct the list of comorbidity.',
  source:
    'audit models count an axial length of 26.0 mm and more (from memory); high myopia is -6 D and more (IMI, IOVS 2021)',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'comorbidity: none') },
  sound: { note: longEye },
});
