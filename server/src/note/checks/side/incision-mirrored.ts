import { siteAt } from '../../calculations/position/site.ts';
import { operationCheck, type About } from '../check.ts';
import { mirroredIncision } from '../support/incision-site.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';
import { rounded } from '../support/words.ts';

export const incisionMirrored = operationCheck({
  id: 'incision-mirrored',
  group: 'side and identity',
  summary: 'The main incision lies where it would be in the other eye: nasal and temporal are changed over.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    const found = mirroredIncision(note);
    const eye = certainEye(note);
    if (found === undefined || eye === undefined) return;
    const { made, madeAt, expected, from } = found;
    const inDegrees = made.value.kind !== 'word';
    const here = inDegrees
      ? `the incision at ${made.text} is ${siteAt(madeAt, eye)} in a ${eye} eye`
      : `the incision is ${made.text}`;
    const there = from === 'plan' ? `${expected.text} was planned` : `the surgeon sat ${expected.text}`;
    const question = inDegrees
      ? `Is it another eye, or should it be ${rounded((540 - madeAt) % 360, 0)}°?`
      : 'Are nasal and temporal changed over, or is it another eye?';
    say({
      at: made,
      message: `Side: ${here}, but ${there}. ${question}`,
      related: [related(from === 'plan' ? `planned: ${expected.text}` : `the seat: ${expected.text}`, expected)],
    });
  },
});

export const aboutIncisionMirrored: About = () => ({
  why: 'On the dial, temporal is 180° in a right eye and 0° in a left eye; a mirrored site often means that the side is wrong.',
  whatToDo: 'Look which eye was operated and where the incision is; then correct the degrees or the word by hand.',
  source: 'ISO 8429:1986 (graduated dial)',
  since: '1.0',
  faulty: {
    note: 'incisions:\n  - kind: main\n    at: 0°\n    width: 2.4 mm\n    plane: clear corneal\n    sutures: none',
  },
  sound: {
    note: 'incisions:\n  - kind: main\n    at: 180°\n    width: 2.4 mm\n    plane: clear corneal\n    sutures: none',
  },
});
