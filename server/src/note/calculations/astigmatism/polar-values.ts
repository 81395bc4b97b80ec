import { calculation } from '../calculation.ts';
import { angle, vector } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Vector } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';
import { componentAcross, componentAlong } from './double-angle.ts';

const inputs = { corneal: vector('corneal astigmatism'), reference: angle('reference meridian') };
const domain = 'With the reference at 90, a positive meridional value is with the rule.';
const corneal = { magnitude: 2, axis: 20 };

export const meridionalPolarValue = calculation<{ corneal: Vector; reference: number }, number>({
  name: 'meridional-polar-value',
  topic: 'Astigmatism',
  definition: 'The part of the astigmatism that acts along a reference meridian; positive is steeper there.',
  inputs,
  unit: 'D',
  domain,
  method: 'KP = M [sin²((a + 90) - m) - cos²((a + 90) - m)] = M cos 2 (a - m), a = steep meridian',
  source: { citation: CITATIONS.naeser, status: 'seen' },
  example: { input: { corneal, reference: 135 }, gives: -1.285575 },
  compute: (given) => found(componentAlong(given.corneal, given.reference)),
});

export const torsionalPolarValue = calculation<{ corneal: Vector; reference: number }, number>({
  name: 'torsional-polar-value',
  topic: 'Astigmatism',
  definition: 'The part of the astigmatism at 45 degrees counter-clockwise of a reference meridian.',
  inputs,
  unit: 'D',
  domain,
  method: 'KP(m + 45) = M sin 2 (a - m)',
  source: { citation: CITATIONS.naeser, status: 'derived' },
  example: { input: { corneal, reference: 135 }, gives: 1.532089 },
  compute: (given) => found(componentAcross(given.corneal, given.reference)),
});
