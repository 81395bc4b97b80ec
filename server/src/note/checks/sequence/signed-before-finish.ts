import { operationCheck, type About } from '../check.ts';
import { minuteOf, outOfLine, timesOf } from '../support/clock.ts';
import { dayOf } from '../support/dates.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { related } from '../support/place.ts';

export const signedBeforeFinish = operationCheck({
  id: 'signed-before-finish',
  group: 'sequence and consequence',
  summary: 'The note was signed before the operation was over.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const { date, finish, signed } = note;
    if (dateInDoubt(note, context) || outOfLine(timesOf(note)).length > 0) return;
    for (const { at } of signed?.items ?? []) {
      if (at === undefined || date === undefined) continue;
      const day = dayOf(at.value);
      // The clock of the signature is read as the clock of the theatre.
      const early =
        day < date.value ||
        (day === date.value && finish !== undefined && minuteOf(at.value.slice(11)) < minuteOf(finish.value));
      if (!early) continue;
      const end = day < date.value || finish === undefined ? date : finish;
      say({
        at,
        message: `Signature: it is dated ${at.text}, before ${end === date ? `the operation of ${date.text}` : `the finish at ${end.text}`}.`,
        related: [related(end === date ? 'the date of the operation' : 'the finish', end)],
      });
    }
  },
});

export const aboutSignedBeforeFinish: About = () => ({
  why: 'Nobody can sign for what has not happened yet.',
  whatToDo: 'Correct the time of the signature, or the date and finish of the operation.',
  source: '42 CFR 482.24(c)(1) (dated, timed, authenticated; as quoted)',
  since: '1.0',
  faulty: { note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-08T09:48+01:00' },
  sound: { note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-08T10:48+01:00' },
});
