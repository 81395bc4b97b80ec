import { textCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf, placeOfMissing } from '../support/place.ts';
import { listed } from '../support/words.ts';
import { isWritten } from '../support/written.ts';

const wanted = [
  ['by', 'who signed'],
  ['at', 'when'],
  ['meaning', 'as what'],
] as const;

export const signatureMissing = textCheck({
  id: 'signature-missing',
  group: 'completeness',
  summary: 'A final note is not signed, or a signature has no name, time or meaning.',
  severity: 'error',
  allowable: false,
  run: (reading, say, context) => {
    if (reading.kind === null || reading.kind === 'department' || context.status !== 'final') return;
    const { signed } = reading.note;
    if (signed === undefined || signed.items.length === 0) {
      if (isWritten(reading, ['signed'])) return;
      say({
        at: placeOfMissing(context),
        message: 'Signature: the note is final but not signed. Write who signed, as what, and when.',
      });
      return;
    }
    for (const signature of signed.items) {
      const missing = missingIn(signature, wanted, context);
      if (missing.length > 0)
        say({ at: headOf(signature.$, context), message: `Signature: it does not say ${listed(missing, 'or')}.` });
    }
  },
});

export const aboutSignatureMissing: About = () => ({
  why: 'An unsigned note is not a record: nobody answers for it.',
  whatToDo: 'Sign it: who, as what (author, supervisor), and when with the offset of the clock.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (signature); 42 CFR 482.24(c)(1) (dated, timed, authenticated)',
  since: '1.0',
  faulty: { note: 'without: signed' },
  sound: { note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-08T10:48+01:00' },
});
