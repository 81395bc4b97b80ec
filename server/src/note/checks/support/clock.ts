import { Lately } from '../../lately.ts';
import type { Field, Operation } from '@sideport/schemas';

/** Minutes since midnight of a time of day. */
export function minuteOf(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
}

export interface TimedEvent {
  readonly what: string;
  readonly at: Field<string>;
}

const known = new Lately<Operation, readonly TimedEvent[]>();

/** Recorded times in the order in which they have to follow each other. */
export function timesOf(note: Operation): readonly TimedEvent[] {
  let times = known.get(note);
  if (times === undefined) {
    times = readTimes(note);
    known.set(note, times);
  }
  return times;
}

function readTimes({ safety, start, finish }: Operation): TimedEvent[] {
  return [
    { what: 'the sign-in', at: safety?.['sign-in']?.time },
    { what: 'the time-out', at: safety?.['time-out']?.time },
    { what: 'the start', at: start },
    { what: 'the finish', at: finish },
    { what: 'the sign-out', at: safety?.['sign-out']?.time },
  ].flatMap(({ what, at }) => (at === undefined ? [] : [{ what, at }]));
}

/** Of events that should follow each other, those that are out of line: as few as can be. */
export function outOfLine(events: readonly TimedEvent[]): TimedEvent[] {
  if (events.every((event, i) => i === 0 || minuteOf(events[i - 1]?.at.value ?? '') <= minuteOf(event.at.value)))
    return [];
  const longest: TimedEvent[][] = [];
  for (const [i, event] of events.entries()) {
    let best: TimedEvent[] = [];
    for (let j = 0; j < i; j++) {
      const before = longest[j] ?? [];
      const last = before.at(-1);
      if (last !== undefined && minuteOf(last.at.value) <= minuteOf(event.at.value) && before.length > best.length)
        best = before;
    }
    longest.push([...best, event]);
  }
  const line = longest.reduce((a, b) => (b.length > a.length ? b : a), [] as TimedEvent[]);
  return events.filter((event) => !line.includes(event));
}
