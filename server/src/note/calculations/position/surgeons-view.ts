import { asPosition } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { angle } from '../fields.ts';
import { found } from '../outcome.ts';
import { HOUR, hourAt, positionOfHour } from './clock-hour.ts';

const source = { citation: 'rotation of the dial; agrees with a derivation in space', status: 'derived' } as const;
const domain = "The seat's dial position is the point of the eye nearest to the surgeon, at the bottom of the view.";
const cautions = [
  'A record must say which clock is meant; write the anatomical clock or degrees where anyone else will read it.',
];
const SEAT = angle("the surgeon's seat");

export const positionFromSurgeonsView = calculation<{ hour: number; seat: number }, number>({
  name: 'position-from-surgeons-view',
  topic: 'Position',
  definition: 'Dial position of a clock hour named as the seated surgeon sees it.',
  inputs: { hour: HOUR, seat: SEAT },
  unit: '°',
  domain,
  method: '(90 - 30 x hour) + seat - 270',
  source,
  cautions,
  example: { input: { hour: 8, seat: 45 }, gives: 345 },
  compute: ({ hour, seat }) => found(asPosition(positionOfHour(hour) + seat - 270)),
});

export const surgeonsViewHour = calculation<{ position: number; seat: number }, number>({
  name: 'surgeons-view-hour',
  topic: 'Position',
  definition: 'The clock hour at which the seated surgeon sees a dial position.',
  inputs: { position: angle('position'), seat: SEAT },
  unit: "o'clock",
  domain,
  method: 'view angle = position - seat + 270, then (90 - view angle) / 30',
  source,
  cautions,
  example: { input: { position: 90, seat: 180 }, gives: 9 },
  compute: ({ position, seat }) => found(hourAt(position - seat + 270)),
});
