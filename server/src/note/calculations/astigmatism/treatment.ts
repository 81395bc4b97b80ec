import { meridianDifference } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { vector } from '../fields.ts';
import { found, refused } from '../outcome.ts';
import type { Vector } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';
import { componentAlong, difference } from './double-angle.ts';

const topic = 'Astigmatism';
const meaning = { citation: `${CITATIONS.alpins1993}; ${CITATIONS.alpinsGoggin2004}`, status: 'seen' } as const;
const fromMemory = { citation: `${CITATIONS.alpins1993}; ${CITATIONS.alpins2001}`, status: 'from memory' } as const;
const domain = 'All of it on one plane: either the cornea or the corneal plane of the refraction.';
const needsTarget = 'the target induced astigmatism is zero: there was nothing to correct';

const before = vector('astigmatism before');
const after = vector('astigmatism after');
const target = vector('astigmatism aimed at');
const induced = vector('induced astigmatism');
const aimed = vector('target induced astigmatism');

export const targetInducedAstigmatism = calculation<{ before: Vector; target: Vector }, Vector>({
  name: 'target-induced-astigmatism',
  topic,
  definition: 'The change the operation was meant to make.',
  inputs: { before, target },
  unit: 'D',
  domain,
  method: 'vector difference, target - before',
  source: fromMemory,
  example: {
    input: { before: { magnitude: 2.6, axis: 107 }, target: { magnitude: 0.4, axis: 107 } },
    gives: { magnitude: 2.2, axis: 17 },
  },
  compute: (given) => found(difference(given.target, given.before)),
});

export const differenceVector = calculation<{ target: Vector; after: Vector }, Vector>({
  name: 'difference-vector',
  topic,
  definition: 'The change that would still be needed to reach the target.',
  inputs: { target, after },
  unit: 'D',
  domain,
  method: 'vector difference, target - after',
  source: fromMemory,
  example: {
    input: { target: { magnitude: 0.4, axis: 107 }, after: { magnitude: 1.1, axis: 95 } },
    gives: { magnitude: 0.752383, axis: 178.755881 },
  },
  compute: (given) => found(difference(given.target, given.after)),
});

type Pair = { induced: Vector; aimed: Vector };
const inputs = { induced, aimed };
const pair: Pair = { induced: { magnitude: 1.656659, axis: 24.83415 }, aimed: { magnitude: 2.2, axis: 17 } };

export const magnitudeOfError = calculation<Pair, number>({
  name: 'magnitude-of-error',
  topic,
  definition: 'By how much the induced change was larger than intended; negative is too little.',
  inputs,
  unit: 'D',
  domain,
  method: '|SIA| - |TIA|',
  source: meaning,
  example: { input: pair, gives: -0.543341 },
  compute: (given) => found(given.induced.magnitude - given.aimed.magnitude),
});

export const angleOfError = calculation<Pair, number>({
  name: 'angle-of-error',
  topic,
  definition: 'By how much the induced change was turned from the intended axis; counter-clockwise positive.',
  inputs,
  unit: '°',
  domain,
  method: 'axis of SIA - axis of TIA, from -90 to 90',
  source: meaning,
  example: { input: pair, gives: 7.83415 },
  compute: (given) =>
    given.induced.axis === null || given.aimed.axis === null
      ? refused('there is no induced or no intended change, so there is no angle between them')
      : found(meridianDifference(given.induced.axis, given.aimed.axis)),
});

export const correctionIndex = calculation<Pair, number>({
  name: 'correction-index',
  topic,
  definition: 'Induced change over intended change; 1 is ideal, below 1 too little.',
  inputs,
  unit: '',
  domain,
  method: '|SIA| / |TIA|',
  source: meaning,
  example: { input: pair, gives: 0.753027 },
  compute: (given) =>
    given.aimed.magnitude === 0 ? refused(needsTarget) : found(given.induced.magnitude / given.aimed.magnitude),
});

export const flatteningIndex = calculation<Pair, number>({
  name: 'flattening-index',
  topic,
  definition: 'The share of the intended change that acted along the intended axis.',
  inputs,
  unit: '',
  domain,
  method: '|SIA| cos 2 (angle of error) / |TIA|',
  source: meaning,
  example: { input: pair, gives: 0.725045 },
  compute: (given) =>
    given.aimed.axis === null || given.aimed.magnitude === 0
      ? refused(needsTarget)
      : found(componentAlong(given.induced, given.aimed.axis) / given.aimed.magnitude),
});

export const indexOfSuccess = calculation<{ difference: Vector; aimed: Vector }, number>({
  name: 'index-of-success',
  topic,
  definition: 'What was left to correct over what was intended; 0 is ideal.',
  inputs: { difference: vector('difference vector'), aimed },
  unit: '',
  domain,
  method: '|DV| / |TIA|',
  source: fromMemory,
  cautions: ['Some texts divide by the astigmatism before; the two agree when the target is zero.'],
  example: { input: { difference: { magnitude: 0.752383, axis: 178.755881 }, aimed: pair.aimed }, gives: 0.341992 },
  compute: (given) =>
    given.aimed.magnitude === 0 ? refused(needsTarget) : found(given.difference.magnitude / given.aimed.magnitude),
});
