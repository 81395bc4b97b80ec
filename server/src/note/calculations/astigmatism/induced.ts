import { calculation } from '../calculation.ts';
import { vector } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Vector } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';
import { difference } from './double-angle.ts';

export const inducedAstigmatism = calculation<{ before: Vector; after: Vector }, Vector>({
  name: 'induced-astigmatism',
  topic: 'Astigmatism',
  definition: 'What the operation added to the corneal astigmatism; the axis is the meridian that became steeper.',
  inputs: { before: vector('corneal astigmatism before'), after: vector('corneal astigmatism after') },
  unit: 'D',
  domain: 'Both measured on the same corneal surface, by the same kind of device, the second when the wound is stable.',
  method: 'vector difference in the double-angle plane, after - before',
  source: {
    citation: `${CITATIONS.jaffeClayman}; ${CITATIONS.holladay1992}`,
    status: 'seen second-hand',
  },
  cautions: ['One eye: measurement noise of about a quarter dioptre goes into it; judge an incision by many eyes.'],
  example: {
    input: { before: { magnitude: 1, axis: 175 }, after: { magnitude: 1.25, axis: 10 } },
    gives: { magnitude: 0.630426, axis: 36.238784 },
  },
  compute: ({ before, after }) => found(difference(after, before)),
});
