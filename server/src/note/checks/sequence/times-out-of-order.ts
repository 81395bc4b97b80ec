import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { minuteOf, outOfLine, timesOf, type TimedEvent } from '../support/clock.ts';

const LATE_EVENING = 20 * 60;
const EARLY_MORNING = 5 * 60;

export const timesOutOfOrder = operationCheck({
  id: 'times-out-of-order',
  group: 'sequence and consequence',
  summary: 'Sign-in, time-out, start, finish and sign-out do not follow each other.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const events = timesOf(note);
    if (isPastMidnight(events)) return;
    for (const event of outOfLine(events)) {
      const neighbour = disagreeing(event, events);
      if (neighbour === undefined) continue;
      const after = events.indexOf(neighbour) < events.indexOf(event);
      say({
        at: event.at,
        message: `Times: ${event.what} is recorded at ${event.at.text}, ${after ? 'before' : 'after'} ${neighbour.what} at ${neighbour.at.text}.`,
        related: [related(`${neighbour.what}: ${neighbour.at.text}`, neighbour.at)],
      });
    }
    const verified = note.safety?.['lens-verified']?.time;
    const { finish } = note;
    if (verified === undefined || finish === undefined || minuteOf(verified.value) <= minuteOf(finish.value)) return;
    if (outOfLine(events).some(({ at }) => at === finish)) return;
    say({
      at: verified,
      message: `Times: the lens is recorded as verified at ${verified.text}, after the finish at ${finish.text}.`,
      related: [related(`the finish: ${finish.text}`, finish)],
    });
  },
});

export const aboutTimesOutOfOrder: About = () => ({
  why: 'A time-out after the first incision was no time-out; usually a time is mistyped.',
  whatToDo: 'Compare with the theatre log and correct the time that is wrong.',
  source: 'WHO Surgical Safety Checklist 2009 (order of the three pauses)',
  since: '1.0',
  faulty: { note: 'safety:\n  time-out:\n    time: 10:11' },
  sound: { note: 'safety:\n  time-out:\n    time: 10:04' },
});

/** An operation that began late in the evening and ended after midnight: the clock starts again. */
function isPastMidnight(events: readonly TimedEvent[]): boolean {
  const minutes = events.map(({ at }) => minuteOf(at.value));
  return minutes.some((minute) => minute >= LATE_EVENING) && minutes.some((minute) => minute < EARLY_MORNING);
}

/** The nearest event that stands on the wrong side of this one. */
function disagreeing(event: TimedEvent, events: readonly TimedEvent[]): TimedEvent | undefined {
  const here = events.indexOf(event);
  return events
    .filter((other, there) => {
      const difference = minuteOf(other.at.value) - minuteOf(event.at.value);
      return there < here ? difference > 0 : there > here && difference < 0;
    })
    .toSorted((a, b) => Math.abs(events.indexOf(a) - here) - Math.abs(events.indexOf(b) - here))[0];
}
