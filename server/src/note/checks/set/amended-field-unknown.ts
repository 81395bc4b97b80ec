import { replacing } from '../support/fixes.ts';
import { amendmentCheck, type About } from '../check.ts';
import { nearestAmended, planOfAmended } from '../support/amended.ts';

export const amendedFieldUnknown = amendmentCheck({
  id: 'amended-field-unknown',
  group: 'across notes',
  summary: 'An amendment changes a field that does not exist.',
  severity: 'error',
  allowable: false,
  run: ({ changes }, say, { reading, amended }) => {
    for (const { field } of changes?.items ?? []) {
      if (field === undefined || planOfAmended(field.value, amended) !== undefined) continue;
      const near = nearestAmended(field.value, amended);
      say({
        at: field,
        fixes: near === undefined ? [] : [replacing(reading, field.span, near)],
        message: `Amendment: ${amended?.kind === 'follow-up' ? 'a follow-up' : 'an operation'} has no field “${field.text}”.${near === undefined ? '' : ` Is ${near} meant?`}`,
      });
    }
  },
});

export const aboutAmendedFieldUnknown: About = () => ({
  why: 'A change of a field that does not exist changes nothing when the note is read with its amendments.',
  whatToDo: 'Write the field as its path from the top: lens.serial, incisions[0].at.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contac\n    was: 3 min\n    now: 5 min\n    reason: the theatre log says five minutes',
  },
  sound: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contact\n    was: 3 min\n    now: 5 min\n    reason: the theatre log says five minutes',
  },
});
