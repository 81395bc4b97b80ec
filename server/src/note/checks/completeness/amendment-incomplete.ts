import { amendmentCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf, placeOfMissing } from '../support/place.ts';
import { listed } from '../support/words.ts';

const ofAll = [
  ['amends', 'which note it amends'],
  ['kind', 'whether it is an addendum, a correction or a late entry'],
  ['at', 'when it was written'],
  ['by', 'who wrote it'],
] as const;
const ofChange = [
  ['field', 'the field'],
  ['was', 'the old value'],
  ['now', 'the new value'],
] as const;

export const amendmentIncomplete = amendmentCheck({
  id: 'amendment-incomplete',
  group: 'completeness',
  summary: 'An amendment does not say what it amends, who wrote it, when, or why.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const asked = 'Asked for by CMS Pub 100-08, chapter 3, 3.3.2.5.';
    const missing = missingIn(note, ofAll, context);
    const isCorrection = note.kind?.value === 'correction';
    if (isCorrection && note.changes === undefined)
      missing.push(...missingIn(note, [['changes', 'what was changed']] as const, context));
    if (!isCorrection && note.changes === undefined)
      missing.push(...missingIn(note, [['text', 'what is added']] as const, context));
    if (missing.length > 0)
      say({ at: placeOfMissing(context), message: `Amendment: the note does not say ${listed(missing)}. ${asked}` });
    for (const change of note.changes?.items ?? []) {
      const gaps: string[] = missingIn(change, ofChange, context);
      if (change.reason === undefined && note.reason === undefined)
        gaps.push(...missingIn(change, [['reason', 'the reason']] as const, context));
      if (gaps.length > 0)
        say({
          at: change.field ?? headOf(change.$, context),
          message: `Amendment: a change does not say ${listed(gaps)}. ${asked}`,
        });
    }
  },
});

export const aboutAmendmentIncomplete: About = () => ({
  why: 'An amendment counts only when it is identified, dated, authored, and leaves the original visible.',
  whatToDo: 'Fill in what the message names.',
  source: 'CMS Pub 100-08, chapter 3, 3.3.2.5',
  since: '1.0',
  faulty: { base: 'amendment', note: 'without: by' },
  sound: { base: 'amendment', note: 'by: S-02' },
});
