import { asAxis } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { found, refused } from '../outcome.ts';
import type { Vector } from '../quantities.ts';
import { awayFromSquare, meridianField, type Keratometry } from './meridians.ts';

const inputs = { k1: meridianField('K1'), k2: meridianField('K2') };
const source = { citation: 'keratometry convention', status: 'common practice' } as const;
const example = { k1: { power: 42.5, axis: 180 }, k2: { power: 44, axis: 90 } };

/** Degrees away from square beyond which two principal meridians no longer describe one cylinder well. */
const IRREGULAR = 10;

export const cornealAstigmatism = calculation<Keratometry, Vector>({
  name: 'corneal-astigmatism',
  topic: 'Keratometry',
  definition: 'Difference of the two principal corneal powers, at the steep meridian.',
  inputs,
  unit: 'D',
  domain: 'The meridian of at least one power must be recorded, unless the two powers are equal.',
  method: 'K steep - K flat, axis = steep meridian; equal powers have no axis',
  source,
  cautions: ['From the front of the cornea only; the back surface usually adds some against-the-rule astigmatism.'],
  example: { input: example, gives: { magnitude: 1.5, axis: 90 } },
  compute: (keratometry) => {
    const { k1, k2 } = keratometry;
    if (k1.power === k2.power) return found<Vector>({ magnitude: 0, axis: null });
    const [steep, flat] = k1.power > k2.power ? [k1, k2] : [k2, k1];
    const axis = steep.axis ?? (flat.axis === null ? null : flat.axis + 90);
    if (axis === null) return refused('neither K1 nor K2 has its meridian recorded');
    const off = awayFromSquare(keratometry);
    const cautions =
      off > IRREGULAR
        ? [
            `The two meridians are ${Math.round(off)}° from square: irregular astigmatism or a slip; measure again before planning.`,
          ]
        : [];
    return found<Vector>({ magnitude: steep.power - flat.power, axis: asAxis(axis) }, cautions);
  },
});

export const keratometryAwayFromSquare = calculation<Keratometry, number>({
  name: 'keratometry-away-from-square',
  topic: 'Keratometry',
  definition: 'How far the two recorded principal meridians are from 90 degrees apart.',
  inputs,
  unit: '°',
  domain: 'Both meridians must be recorded.',
  method: '90 - the smaller angle between the two meridians',
  source: { citation: 'arithmetic', status: 'derived' },
  example: { input: example, gives: 0 },
  compute: (keratometry) =>
    keratometry.k1.axis === null || keratometry.k2.axis === null
      ? refused('the meridian of K1 or of K2 is not recorded')
      : found(awayFromSquare(keratometry)),
});
