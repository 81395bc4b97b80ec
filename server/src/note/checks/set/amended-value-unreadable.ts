import { amendmentCheck, type About } from '../check.ts';
import { planOfAmended } from '../support/amended.ts';
import { replacing } from '../support/fixes.ts';
import { absenceIn } from '../../reading/absence.ts';

export const amendedValueUnreadable = amendmentCheck({
  id: 'amended-value-unreadable',
  group: 'across notes',
  summary: 'The new value of an amendment is none that its field could have.',
  severity: 'error',
  allowable: false,
  run: ({ changes }, say, context) => {
    for (const { field, now } of changes?.items ?? []) {
      if (field === undefined || now === undefined) continue;
      const plan = planOfAmended(field.value, context.amended);
      if (plan?.kind !== 'value' || absenceIn(now.value, plan.guide) !== undefined) continue;
      const reading = plan.notation.read(now.value);
      if (reading.ok) continue;
      const { message, suggestion } = reading.fault;
      const isSide = plan.notation.name === 'side';
      say({
        at: now,
        message: `Amendment: ${field.text}: ${message}`,
        fixes: suggestion === undefined || isSide ? [] : [replacing(context.reading, now.span, suggestion)],
      });
    }
  },
});

export const aboutAmendedValueUnreadable: About = () => ({
  why: 'The note is read together with its amendments: a new value that nobody understands takes the old one away and puts nothing in its place.',
  whatToDo: 'Write the new value as the field itself would be written.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contact\n    was: 3 min\n    now: 5 mm\n    reason: the theatre log says five minutes',
  },
  sound: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contact\n    was: 3 min\n    now: 5 min\n    reason: the theatre log says five minutes',
  },
});
