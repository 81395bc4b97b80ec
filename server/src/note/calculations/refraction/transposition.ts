import { asAxis } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { refraction } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Refraction } from '../quantities.ts';

export const transposition = calculation<{ refraction: Refraction }, Refraction>({
  name: 'transposition',
  topic: 'Refraction',
  definition: 'The same refraction in the other cylinder form.',
  inputs: { refraction: refraction('refraction') },
  unit: 'D',
  domain: 'Twice transposed is the refraction itself; the axis is written 180, not 0.',
  method: "S' = S + C, C' = -C, axis' = axis + 90",
  source: { citation: 'convention', status: 'common practice' },
  example: {
    input: { refraction: { sphere: -0.75, cylinder: 1.25, axis: 70 } },
    gives: { sphere: 0.5, cylinder: -1.25, axis: 160 },
  },
  compute: ({ refraction: { sphere, cylinder, axis } }) =>
    found<Refraction>(
      cylinder === 0
        ? { sphere, cylinder: 0, axis: null }
        : { sphere: sphere + cylinder, cylinder: -cylinder, axis: axis === null ? null : asAxis(axis + 90) },
    ),
});
