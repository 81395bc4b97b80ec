import { asAxis, asPosition } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { angle } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

const source = { citation: CITATIONS.iso8429, status: 'seen' } as const;

export const incisionPosition = calculation<{ position: number }, number>({
  name: 'incision-position',
  topic: 'Position',
  definition: 'Where the incision lies on the whole circle, 0 <= position < 360.',
  inputs: { position: angle('position of the incision') },
  unit: '°',
  domain: 'Counter-clockwise from the right-hand horizontal of a person facing the eye; the same dial for both eyes.',
  method: 'brought into one turn',
  source,
  example: { input: { position: 360 }, gives: 0 },
  compute: ({ position }) => found(asPosition(position)),
});

export const incisionMeridian = calculation<{ position: number }, number>({
  name: 'incision-meridian',
  topic: 'Position',
  definition: 'The meridian the incision lies on, 0 < meridian <= 180.',
  inputs: { position: angle('position of the incision') },
  unit: '°',
  domain: 'A meridian cannot tell temporal from nasal; keep the position beside it.',
  method: 'position modulo 180; the horizontal is written 180',
  source,
  example: { input: { position: 0 }, gives: 180 },
  compute: ({ position }) => found(asAxis(position)),
});
