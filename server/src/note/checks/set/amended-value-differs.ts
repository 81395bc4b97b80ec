import { amendmentCheck, type About } from '../check.ts';
import { planOfAmended } from '../support/amended.ts';
import { fieldIn } from '../support/field-path.ts';
import { related } from '../support/place.ts';
import { sameWords } from '../support/words.ts';

export const amendedValueDiffers = amendmentCheck({
  id: 'amended-value-differs',
  group: 'across notes',
  summary: 'The amendment quotes another old value than stands in the note.',
  severity: 'error',
  allowable: false,
  run: ({ changes }, say, { amended }) => {
    if (amended === null) return;
    for (const { field, was } of changes?.items ?? []) {
      if (field === undefined || was === undefined || planOfAmended(field.value, amended)?.kind !== 'value') continue;
      const original = fieldIn(amended.note, field.value);
      if (original === undefined || sameWords(original.text, was.value)) continue;
      say({
        at: was,
        message: `Amendment: ${field.text} is quoted as “${was.text}”, but the note says “${original.text}”.`,
        related: [related(`the note: ${original.text}`, original, amended.file)],
      });
    }
  },
});

export const aboutAmendedValueDiffers: About = () => ({
  why: 'The old value is kept so that the reader sees what was changed: when it is wrong, the wrong field or the wrong note is amended.',
  whatToDo: 'Copy the old value from the note, letter by letter.',
  source: 'CMS Pub 100-08, chapter 3, 3.3.2.5 (original content clearly identified)',
  since: '1.0',
  faulty: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contact\n    was: 2 min\n    now: 5 min\n    reason: the theatre log says five minutes',
  },
  sound: {
    base: 'amendment',
    note: 'changes:\n  - field: antisepsis.contact\n    was: 3 min\n    now: 5 min\n    reason: the theatre log says five minutes',
  },
});
