import { id, list, section, text, value, word } from '../fields/field.ts';
import { dateAndTime } from '../notation/time.ts';
import { vocabulary } from '../notation/words.ts';

const rule = 'CMS Pub 100-08, chapter 3, 3.3.2.5';

const kinds = vocabulary('kind of amendment', [
  ['addendum', [], 'New information.'],
  ['correction', [], 'An error put right.'],
  ['late entry', ['late-entry', 'delayed entry'], 'Information that was omitted.'],
]);

export const amendmentFields = {
  amends: id({ label: 'Amends', meaning: 'The id of the sealed note.', example: 'OP-2031-0417', source: rule }),
  kind: word(kinds, {
    label: 'Kind',
    meaning: 'Addendum, correction or late entry.',
    example: 'correction',
    source: rule,
  }),
  at: value(dateAndTime, {
    label: 'Written at',
    meaning: 'When the amendment was written, with the offset.',
    example: '2031-03-16T08:30+01:00',
    source: rule,
  }),
  by: id({ label: 'Author', meaning: 'Staff reference of the author.', example: 'S-02', source: rule }),
  changes: list(
    {
      label: 'Changes',
      meaning: 'Each change with the old and the new value; nothing is overwritten.',
      source: rule,
      says: ['none'],
    },
    section(
      { label: 'Change', meaning: 'One change.' },
      {
        field: id({ label: 'Field', meaning: 'Which field, as its path in the note.', example: 'lens.serial' }),
        was: text({
          label: 'Was',
          meaning: 'What the sealed note says.',
          example: '0040719025',
          says: ['not recorded'],
        }),
        now: text({ label: 'Now', meaning: 'What it should say.', example: '0040719052' }),
        reason: text({ label: 'Reason', meaning: 'Why.', example: 'digits transposed' }),
      },
    ),
  ),
  reason: text({ label: 'Reason', meaning: 'Why the note is amended.', source: rule }),
  text: text({ label: 'Text', meaning: 'The addendum or late entry in words.', source: rule }),
};
