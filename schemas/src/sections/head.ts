import { id, list, section, text, value, word } from '../fields/field.ts';
import { identifier } from '../notation/plain.ts';
import { calendarDate, timeOfDay } from '../notation/time.ts';
import { vocabulary } from '../notation/words.ts';
import { extraProcedures, eyeOrder, procedures, recordKinds, sides, statuses, urgencies } from '../vocabulary/head.ts';

/** The first lines that every record shares. */
export const formatVersion = vocabulary('format version', ['1']);

export const recordHead = {
  opnote: word(formatVersion, {
    label: 'Format version',
    meaning: 'The version of the note format; this is version 1.',
    example: '1',
  }),
  record: word(recordKinds, {
    label: 'Kind of record',
    meaning: 'Which kind of document this is.',
    example: 'operation',
  }),
  status: word(statuses, {
    label: 'Status',
    meaning:
      'How far the note is: planned before the operation, draft while it is written, final when it is ready to be signed.',
    example: 'draft',
  }),
  id: id({
    label: 'Note id',
    meaning: 'The name of this note within its set; follow-ups and amendments point to it.',
    example: 'OP-2031-0417',
    spoken: ['note number'],
  }),
};

export const operationHead = {
  date: value(calendarDate, {
    label: 'Date of the operation',
    meaning: 'The day of the operation, or the day it is planned for.',
    example: '2031-03-14',
    source: 'RCS Good Surgical Practice 2014, 1.3; 42 CFR 482.51(b)(6)',
    spoken: ['operation date', 'date of operation'],
  }),
  start: value(timeOfDay, {
    label: 'Start',
    meaning: 'When the operation began: the first incision.',
    example: '09:12',
    source: 'RCS Good Surgical Practice 2014, 1.3',
    spoken: ['started at'],
  }),
  finish: value(timeOfDay, {
    label: 'Finish',
    meaning: 'When the operation ended: the eye closed and covered.',
    example: '09:41',
    source: 'RCS Good Surgical Practice 2014, 1.3',
    spoken: ['finished at'],
  }),
  place: value(identifier, {
    label: 'Place',
    meaning: 'The theatre or the facility, by its local code.',
    example: 'Theatre 3',
    source: '42 CFR 482.51(b)(6)',
  }),
  urgency: word(urgencies, {
    label: 'Urgency',
    meaning: 'Elective, urgent or emergency.',
    example: 'elective',
    source: 'RCS Good Surgical Practice 2014, 1.3',
  }),
  procedure: word(procedures, {
    label: 'Procedure',
    meaning: 'The operation in one phrase, as it was done (or is planned).',
    example: 'phacoemulsification with lens',
    source: 'RCS Good Surgical Practice 2014, 1.3; 42 CFR 482.51(b)(6)',
    spoken: ['procedure', 'operation'],
  }),
  'extra-procedures': list(
    {
      label: 'Extra procedures',
      meaning: 'What else was done in the same sitting, each with its reason, or none.',
      source: 'RCS Good Surgical Practice 2014, 1.3 (any extra procedure and the reason why)',
      says: ['none'],
    },
    section(
      { label: 'Extra procedure', meaning: 'One procedure besides that on the lens.' },
      {
        what: word(extraProcedures, { label: 'What', meaning: 'What was done.', example: 'trabeculectomy' }),
        reason: text({ label: 'Reason', meaning: 'Why.', example: 'pressure not controlled by drops' }),
        text: text({
          label: 'Account',
          meaning: 'How it was done, in words.',
          example: 'superior, mitomycin 0.02 % for 2 min',
        }),
      },
    ),
  ),
};

export const eye = word(sides, {
  label: 'Operated eye',
  meaning: 'The eye this record is about. One record is about one eye.',
  example: 'left',
  source: 'WHO Surgical Safety Checklist 2009; RCS Good Surgical Practice 2014, 1.3',
  spoken: ['eye', 'side'],
});

export const whichEye = word(eyeOrder, {
  label: 'First or second eye',
  meaning: 'Whether this is the first eye to be operated or the second.',
  example: 'first',
  source: 'Cataract National Data Set (UK); Sim et al., Eye 2024',
  spoken: ['first or second eye'],
});
