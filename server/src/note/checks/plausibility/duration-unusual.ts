import { operationCheck, type About } from '../check.ts';
import { minuteOf, outOfLine, timesOf } from '../support/clock.ts';
import { related } from '../support/place.ts';

const SHORTEST = 4;
const LONGEST = 180;

export const durationUnusual = operationCheck({
  id: 'duration-unusual',
  group: 'plausibility',
  summary: 'The operation is recorded as very short or very long.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const { start, finish } = note;
    if (start === undefined || finish === undefined) return;
    const minutes = minuteOf(finish.value) - minuteOf(start.value);
    if (minutes < 0 || (minutes >= SHORTEST && minutes <= LONGEST)) return;
    if (outOfLine(timesOf(note)).some(({ at }) => at === start || at === finish)) return;
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
  source: 'limits of 4 and 180 minutes: common practice, no source',
  since: '1.0',
  faulty: {
    note: 'finish: 16:26\nsafety:\n  sign-out:\n    time: 16:29\nsigned:\n  - by: S-02\n    meaning: author\n    at: 2031-04-08T16:48+01:00',
  },
  sound: { note: 'finish: 10:26' },
});
