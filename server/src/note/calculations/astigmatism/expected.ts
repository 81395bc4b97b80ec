import { cos, sin } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { angle, optional, quantity, vector } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Vector } from '../quantities.ts';
import { add, toVector } from './double-angle.ts';

export interface IncisionEffect {
  /** Flattening along the incision's meridian, D; negative when the incision steepens. */
  readonly flatteningD: number;
  /** Torque of the incision, D, counter-clockwise positive; 0 when left out. */
  readonly torqueD?: number;
  /** Dial position or meridian of the incision, degrees. */
  readonly incision: number;
}

export const expectedInducedAstigmatism = calculation<IncisionEffect, Vector>({
  name: 'expected-induced-astigmatism',
  topic: 'Astigmatism',
  definition: 'What the incision is expected to add to the corneal astigmatism: flattening where it lies.',
  inputs: {
    flatteningD: quantity("the incision's flattening", 'D', -5, 5),
    torqueD: optional(quantity("the incision's torque", 'D', -5, 5)),
    incision: angle('position of the incision'),
  },
  unit: 'D',
  domain: "The surgeon's own CENTROID for this width and site; never a mean of magnitudes, never a textbook figure.",
  method: 'flattening at the incision = the same cylinder at incision + 90, torque at incision + 135',
  source: { citation: 'double-angle vectors', status: 'derived' },
  cautions: ['An average of past eyes; a single eye may differ by more than the effect itself.'],
  example: { input: { flatteningD: 0.35, incision: 135 }, gives: { magnitude: 0.35, axis: 45 } },
  compute: ({ flatteningD, torqueD = 0, incision }) => {
    const steepens = 2 * (incision + 90);
    return found(
      toVector({
        x: flatteningD * cos(steepens) - torqueD * sin(steepens),
        y: flatteningD * sin(steepens) + torqueD * cos(steepens),
      }),
    );
  },
});

export const expectedCornealAstigmatism = calculation<{ before: Vector; induced: Vector }, Vector>({
  name: 'expected-corneal-astigmatism',
  topic: 'Astigmatism',
  definition: 'Corneal astigmatism expected after the operation; axis = steep meridian.',
  inputs: { before: vector('corneal astigmatism before'), induced: vector('expected induced astigmatism') },
  unit: 'D',
  domain: 'Front surface of the cornea, before any later healing change.',
  method: 'vector sum in the double-angle plane',
  source: { citation: 'double-angle vectors', status: 'derived' },
  cautions: ['An expectation from an average incision, not a measurement of this eye.'],
  example: {
    input: { before: { magnitude: 1.2, axis: 85 }, induced: { magnitude: 0.35, axis: 45 } },
    gives: { magnitude: 1.307044, axis: 77.354795 },
  },
  compute: ({ before, induced }) => found(add(before, induced)),
});
