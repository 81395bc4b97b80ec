import { followUpCheck, type About } from '../check.ts';
import { dayOf } from '../support/dates.ts';
import { related } from '../support/place.ts';

export const signedBeforeVisit = followUpCheck({
  id: 'signed-before-visit',
  group: 'sequence and consequence',
  summary: 'The record of a visit was signed before the visit.',
  severity: 'error',
  allowable: false,
  run: ({ date, signed }, say, { today }) => {
    // A visit in the future is remarked by itself.
    if (date === undefined || (today !== null && date.value > today)) return;
    for (const { at } of signed?.items ?? []) {
      if (at === undefined || dayOf(at.value) >= date.value) continue;
      say({
        at,
        message: `Signature: it is dated ${at.text}, before the visit of ${date.text}.`,
        related: [related(`the visit: ${date.text}`, date)],
      });
    }
  },
});

export const aboutSignedBeforeVisit: About = () => ({
  why: 'Nobody can sign for what has not been seen yet.',
  whatToDo: 'Correct the time of the signature or the date of the visit.',
  source: '42 CFR 482.24(c)(1) (dated, timed, authenticated; as quoted)',
  since: '1.0',
  faulty: {
    base: 'follow-up',
    note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-05-05T11:20+01:00',
  },
  sound: {
    base: 'follow-up',
    note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-05-06T11:20+01:00',
  },
});
