import { calculation } from '../calculation.ts';
import { angle, vector } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Vector } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';
import { componentAcross, componentAlong } from './double-angle.ts';

const inputs = { induced: vector('induced astigmatism'), meridian: angle('meridian') };
const source = { citation: `${CITATIONS.alpins2001} (terms)`, status: 'derived' } as const;
const domain = 'The meridian of the incision, or the meridian that the treatment was meant to flatten.';
const induced = { magnitude: 1.656659, axis: 24.83415 };

export const flatteningEffect = calculation<{ induced: Vector; meridian: number }, number>({
  name: 'flattening-effect',
  topic: 'Astigmatism',
  definition: 'How much the cornea flattened along a meridian; positive is flattening, negative steepening.',
  inputs,
  unit: 'D',
  domain,
  method: '-|SIA| cos 2 (axis - meridian)',
  source,
  example: { input: { induced, meridian: 107 }, gives: 1.5951 },
  compute: ({ induced: sia, meridian }) => found(-componentAlong(sia, meridian)),
});

export const torque = calculation<{ induced: Vector; meridian: number }, number>({
  name: 'torque',
  topic: 'Astigmatism',
  definition: 'The part of the change that turned the astigmatism without flattening; counter-clockwise positive.',
  inputs,
  unit: 'D',
  domain,
  method: '|SIA| sin 2 (axis - (meridian + 90)); flattening² + torque² = |SIA|²',
  source,
  example: { input: { induced, meridian: 107 }, gives: 0.44741 },
  compute: ({ induced: sia, meridian }) => found(componentAcross(sia, meridian + 90)),
});
