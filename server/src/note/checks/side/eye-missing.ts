import { operationCheck, type About } from '../check.ts';
import { placeOfMissing } from '../support/place.ts';
import { isWritten } from '../support/written.ts';

export const eyeMissing = operationCheck({
  id: 'eye-missing',
  group: 'side and identity',
  summary: 'The note does not say which eye it is about.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    if (note.eye !== undefined) return;
    if (note.$.said['eye'] === undefined && isWritten(context.reading, ['eye'])) return;
    say({
      at: note.$.said['eye'] ?? placeOfMissing(context),
      message: 'Side: the note does not say which eye was operated. Write “eye: right” or “eye: left”.',
    });
  },
});

export const aboutEyeMissing: About = () => ({
  why: 'Without the side no place on the eye, no code and no lens can be checked, and the record is of no use.',
  whatToDo: 'Write “eye: right” or “eye: left” in the head of the note. There is no default.',
  source: 'WHO Surgical Safety Checklist 2009; RCS Good Surgical Practice 2014, 1.3 (site)',
  since: '1.0',
  faulty: { note: 'without: eye' },
  sound: { note: 'eye: right' },
});
