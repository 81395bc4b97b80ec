import { asPosition, NOISE } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { angle, quantity } from '../fields.ts';
import { found } from '../outcome.ts';

export const HOUR = quantity('clock hour', '', 0, 12);

/** Dial position (degrees) of an hour on a clock face with 12 at the top. */
export const positionOfHour = (hour: number): number => asPosition(90 - 30 * hour);

/** The hour of a dial position, 0 < hour <= 12. */
export function hourAt(position: number): number {
  const hour = asPosition(90 - position) / 30;
  return hour < NOISE ? 12 : hour;
}

const source = { citation: 'clock face as seen by a person facing the eye', status: 'common practice' } as const;

export const positionOfClockHour = calculation<{ hour: number }, number>({
  name: 'position-of-clock-hour',
  topic: 'Position',
  definition: 'Dial position of an anatomical clock hour.',
  inputs: { hour: HOUR },
  unit: '°',
  domain: "The anatomical clock, 12 superior in both eyes; the clock of the surgeon's own view is another one.",
  method: '90 - 30 x hour',
  source,
  example: { input: { hour: 11 }, gives: 120 },
  compute: ({ hour }) => found(positionOfHour(hour)),
});

export const clockHourOfPosition = calculation<{ position: number }, number>({
  name: 'clock-hour-of-position',
  topic: 'Position',
  definition: 'Anatomical clock hour of a dial position; twelve is 12, never 0.',
  inputs: { position: angle('position') },
  unit: "o'clock",
  domain: '3 is nasal in a right eye and temporal in a left eye.',
  method: '(90 - position) / 30',
  source,
  example: { input: { position: 345 }, gives: 3.5 },
  compute: ({ position }) => found(hourAt(position)),
});
