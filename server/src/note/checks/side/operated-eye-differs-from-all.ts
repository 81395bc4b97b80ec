import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { namesOf, sidesOf } from '../support/sides.ts';

export const operatedEyeDiffersFromAll = operationCheck({
  id: 'operated-eye-differs-from-all',
  group: 'side and identity',
  summary: 'Everything else in the note names the other eye.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    const { eye, others, eyeInDoubt } = sidesOf(note);
    if (eye === undefined || !eyeInDoubt) return;
    say({
      at: eye,
      message: `Side: this note is about the ${eye.value} eye, but ${namesOf(others)} say ${others[0]?.field.value}. Find out which is right.`,
      related: others.map(({ what, field }) => related(`${what}: ${field.value}`, field)),
    });
  },
});

export const aboutOperatedEyeDiffersFromAll: About = () => ({
  why: 'Then the side of the note itself is probably the slip, and with it every place on the eye and every code.',
  whatToDo:
    'Find out from the patient, the consent and the biometry print-out which side is right, and correct it by hand.',
  source: 'WHO Surgical Safety Checklist 2009',
  since: '1.0',
  faulty: { note: 'eye: left' },
  sound: { note: 'eye: right' },
});
