import { sin } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { angle, refraction } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Refraction } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';

/** Power (D) of a sphere and cylinder along a meridian. */
export function powerAlong({ sphere, cylinder, axis }: Refraction, meridian: number): number {
  return sphere + (axis === null ? 0 : cylinder * sin(meridian - axis) ** 2);
}

export const powerAtMeridian = calculation<{ refraction: Refraction; meridian: number }, number>({
  name: 'power-at-meridian',
  topic: 'Refraction',
  definition: 'Power of a sphere and cylinder along one meridian.',
  inputs: { refraction: refraction('refraction'), meridian: angle('meridian') },
  unit: 'D',
  domain: 'Paraxial; the curvature of an oblique section follows this law, its prism does not.',
  method: 'F(m) = S + C sin²(m - axis)',
  source: { citation: `${CITATIONS.thibos1997} (sine-squared law)`, status: 'seen' },
  example: { input: { refraction: { sphere: -2, cylinder: -1, axis: 180 }, meridian: 90 }, gives: -3 },
  compute: ({ refraction: given, meridian }) => found(powerAlong(given, meridian)),
});
