import { operationCheck, type About } from '../check.ts';
import { minuteOf, outOfLine, timesOf } from '../support/clock.ts';
import { related } from '../support/place.ts';

const SHORTEST = 4;
const LONGEST = 180;
const LATEST_SIGN_OUT = 120;

export const durationUnusual = operationCheck({
  id: 'duration-unusual',
  group: 'plausibility',
  summary: 'The operation, or the time to the sign-out, is recorded as very short or very long.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const { start, finish } = note;
    if (start === undefined || finish === undefined) return;
    const minutes = minuteOf(finish.value) - minuteOf(start.value);
    if (minutes < 0 || outOfLine(timesOf(note)).length > 0) return;
    const out = note.safety?.['sign-out']?.time;
    const later = out === undefined ? 0 : minuteOf(out.value) - minuteOf(finish.value);
    if (out !== undefined && later > LATEST_SIGN_OUT) {
      say({
        at: out,
        message: `Times: the sign-out at ${out.text} is ${later} minutes after the finish at ${finish.text}. Is it right?`,
        related: [related(`the finish: ${finish.text}`, finish)],
      });
      return;
    }
    if (minutes >= SHORTEST && minutes <= LONGEST) return;
    say({
      at: finish,
      message: `Times: from ${start.text} to ${finish.text} the operation took ${minutes} minutes. Is it right?`,
      related: [related(`the start: ${start.text}`, start)],
    });
  },
});

export const aboutDurationUnusual: About = () => ({
  why: 'A digit of the start or the finish is probably mistyped.',
  whatToDo: 'Compare with the theatre log. If it is right, allow the remark.',
  source: 'limits of 4 and 180 minutes, and of 2 hours to the sign-out: common practice, no source',
  since: '1.0',
  faulty: {
    note: 'finish: 16:26\nsafety:\n  sign-out:\n    time: 16:29\nsigned:\n  - by: S-02\n    meaning: author\n    at: 2031-04-08T16:48+01:00',
  },
  sound: { note: 'finish: 10:26' },
});
