import { amendmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { sameWords } from '../support/words.ts';

export const amendedValueSame = amendmentCheck({
  id: 'amended-value-same',
  group: 'across notes',
  summary: 'An amendment gives the old value as the new one.',
  severity: 'error',
  allowable: false,
  run: ({ changes }, say) => {
    for (const { field, was, now } of changes?.items ?? []) {
      if (was === undefined || now === undefined || !sameWords(was.value, now.value)) continue;
      say({
        at: now,
        message: `Amendment: ${field === undefined ? 'a change' : field.text} is “${was.text}” before and after, so that nothing is changed.`,
        related: [related(`the old value: ${was.text}`, was)],
      });
    }
  },
});

export const aboutAmendedValueSame: About = () => ({
  why: 'The correction that was meant is not in the record.',
  whatToDo: 'Write the new value behind “now”.',
  source: 'CMS Pub 100-08, chapter 3, 3.3.2.5',
  since: '1.0',
  faulty: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contact\n    was: 3 min\n    now: 3 min\n    reason: the theatre log says five minutes',
  },
  sound: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contact\n    was: 3 min\n    now: 5 min\n    reason: the theatre log says five minutes',
  },
});
