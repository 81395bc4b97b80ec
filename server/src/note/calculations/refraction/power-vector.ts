import { arctan2, asAxis, cos, sin } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { quantity, refraction } from '../fields.ts';
import { found } from '../outcome.ts';
import type { PowerVector, Refraction } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';

/** Below this (D) a cylinder is noise and has no axis. */
const NO_CYLINDER = 1e-9;

export function toPowerVector({ sphere, cylinder, axis }: Refraction): PowerVector {
  const half = axis === null ? 0 : -cylinder / 2;
  const turn = 2 * (axis ?? 0);
  // Adding 0 turns -0 into 0, which no reader expects in a record.
  return { m: sphere + cylinder / 2, j0: half * cos(turn) + 0, j45: half * sin(turn) + 0 };
}

/** The refraction of a power vector in minus-cylinder form. */
export function toRefraction({ m, j0, j45 }: PowerVector): Refraction {
  const half = Math.hypot(j0, j45);
  if (2 * half < NO_CYLINDER) return { sphere: m, cylinder: 0, axis: null };
  return { sphere: m + half, cylinder: -2 * half, axis: asAxis(arctan2(j45, j0) / 2) };
}

const source = { citation: CITATIONS.thibos1997, status: 'from memory' } as const;
const cautions = [
  'Signs are those of the correcting lens; for the power of a cornea J0 and J45 have the opposite sign.',
];

export const powerVector = calculation<{ refraction: Refraction }, PowerVector>({
  name: 'power-vector',
  topic: 'Refraction',
  definition: 'The refraction as mean sphere and two crossed cylinders at 0 and 45 degrees.',
  inputs: { refraction: refraction('refraction') },
  unit: 'D',
  domain: 'The same for plus- and minus-cylinder form.',
  method: 'M = S + C/2, J0 = -(C/2) cos 2a, J45 = -(C/2) sin 2a',
  source,
  cautions,
  example: {
    input: { refraction: { sphere: -0.75, cylinder: 1.25, axis: 70 } },
    gives: { m: -0.125, j0: 0.478778, j45: -0.401742 },
  },
  compute: (given) => found(toPowerVector(given.refraction)),
});

export const refractionFromPowerVector = calculation<PowerVector, Refraction>({
  name: 'refraction-from-power-vector',
  topic: 'Refraction',
  definition: 'The minus-cylinder refraction of a power vector.',
  inputs: {
    m: quantity('mean sphere', 'D', -60, 40),
    j0: quantity('J0', 'D', -15, 15),
    j45: quantity('J45', 'D', -15, 15),
  },
  unit: 'D',
  domain: 'A zero cylinder has no axis.',
  method: 'C = -2 √(J0² + J45²), S = M - C/2, axis = ½ atan2(J45, J0)',
  source,
  example: { input: { m: -2.5, j0: 0.5, j45: 0 }, gives: { sphere: -2, cylinder: -1, axis: 180 } },
  compute: (given) => found(toRefraction(given)),
});

export const blurStrength = calculation<{ refraction: Refraction }, number>({
  name: 'blur-strength',
  topic: 'Refraction',
  definition: 'Length of the power vector: one number for how far a refraction is from none.',
  inputs: { refraction: refraction('refraction') },
  unit: 'D',
  domain: 'Also the right length for the difference of two refractions.',
  method: 'B = √(M² + J0² + J45²)',
  source,
  example: { input: { refraction: { sphere: 1, cylinder: -2, axis: 45 } }, gives: 1 },
  compute: (given) => {
    const { m, j0, j45 } = toPowerVector(given.refraction);
    return found(Math.hypot(m, j0, j45));
  },
});

export const cornealPowerVector = calculation<{ k1D: number; k2D: number; steepMeridian: number }, PowerVector>({
  name: 'corneal-power-vector',
  topic: 'Keratometry',
  definition: 'Corneal power as mean power and two crossed cylinders.',
  inputs: {
    k1D: quantity('K1', 'D', 30, 70),
    k2D: quantity('K2', 'D', 30, 70),
    steepMeridian: quantity('steep meridian', '°', 0, 180),
  },
  unit: 'D',
  domain: 'Power of the cornea, not of a correcting lens: with-the-rule astigmatism has a negative J0.',
  method: 'M = mean K, J0 = (A/2) cos 2b, J45 = (A/2) sin 2b with A = |K1 - K2| and b = steep meridian',
  source: { citation: `${CITATIONS.thibos1997}, sign for a corneal power`, status: 'derived' },
  example: { input: { k1D: 42, k2D: 44, steepMeridian: 90 }, gives: { m: 43, j0: -1, j45: 0 } },
  compute: ({ k1D, k2D, steepMeridian }) => {
    const half = Math.abs(k1D - k2D) / 2;
    return found({ m: (k1D + k2D) / 2, j0: half * cos(2 * steepMeridian), j45: half * sin(2 * steepMeridian) });
  },
});
