import { asAxis } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { refraction } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Refraction, Vector } from '../quantities.ts';
import { refractionMovedToCornea, VERTEX } from './vertex.ts';

export const refractiveAstigmatism = calculation<{ refraction: Refraction; vertexMm: number }, Vector>({
  name: 'refractive-astigmatism',
  topic: 'Refraction',
  definition: 'Astigmatism of the eye that a refraction corrects, at the corneal plane; axis = meridian of most power.',
  inputs: { refraction: refraction('refraction'), vertexMm: VERTEX },
  unit: 'D',
  domain: 'Comparable with corneal astigmatism: same plane, same sign.',
  method: 'cylinder at the cornea; a minus cylinder corrects excess power at 90 degrees to its axis',
  source: { citation: 'paraxial vergence, double-angle vectors', status: 'derived' },
  example: {
    input: { refraction: { sphere: 0, cylinder: -1, axis: 180 }, vertexMm: 0 },
    gives: { magnitude: 1, axis: 90 },
  },
  compute: (given) => {
    const { cylinder, axis } = refractionMovedToCornea(given.refraction, given.vertexMm);
    if (cylinder === 0 || axis === null) return found<Vector>({ magnitude: 0, axis: null });
    return found<Vector>({ magnitude: Math.abs(cylinder), axis: asAxis(cylinder < 0 ? axis + 90 : axis) });
  },
});
