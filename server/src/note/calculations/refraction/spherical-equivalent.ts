import { calculation } from '../calculation.ts';
import { refraction } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Refraction } from '../quantities.ts';

export const sphericalEquivalent = calculation<{ refraction: Refraction }, number>({
  name: 'spherical-equivalent',
  topic: 'Refraction',
  definition: 'Sphere plus half the cylinder.',
  inputs: { refraction: refraction('refraction') },
  unit: 'D',
  domain: 'The same for plus- and minus-cylinder form.',
  method: 'SE = S + C/2',
  source: { citation: 'convention', status: 'common practice' },
  example: { input: { refraction: { sphere: -14.25, cylinder: -1.5, axis: 95 } }, gives: -15 },
  compute: (given) => found(given.refraction.sphere + given.refraction.cylinder / 2),
});
