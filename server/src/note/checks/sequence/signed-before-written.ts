import { amendmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const signedBeforeWritten = amendmentCheck({
  id: 'signed-before-written',
  group: 'sequence and consequence',
  summary: 'An amendment was signed before it was written.',
  severity: 'error',
  allowable: false,
  run: ({ at: written, signed }, say) => {
    for (const { at } of signed?.items ?? []) {
      if (at === undefined || written === undefined) continue;
      if (Date.parse(at.value.replace(' ', 'T')) >= Date.parse(written.value.replace(' ', 'T'))) continue;
      say({
        at,
        message: `Signature: it is dated ${at.text}, but the amendment was written at ${written.text}.`,
        related: [related(`written at ${written.text}`, written)],
      });
    }
  },
});

export const aboutSignedBeforeWritten: About = () => ({
  why: 'A signature stands for the text that was there when it was given.',
  whatToDo: 'Correct the time of the signature, or when the amendment was written.',
  source: '42 CFR 482.24(c)(1) (dated, timed, authenticated; as quoted)',
  since: '1.0',
  faulty: {
    base: 'amendment',
    note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-09T08:20+01:00',
  },
  sound: {
    base: 'amendment',
    note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-09T08:34+01:00',
  },
});
