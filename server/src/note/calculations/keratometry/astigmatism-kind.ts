import { meridianDifference } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { optional, quantity, vector } from '../fields.ts';
import { found, refused } from '../outcome.ts';
import type { Vector } from '../quantities.ts';

export type AstigmatismKind = 'with-the-rule' | 'against-the-rule' | 'oblique';

const USUAL_LIMIT = 30;

export const astigmatismKind = calculation<{ corneal: Vector; limitDegrees?: number }, AstigmatismKind>({
  name: 'astigmatism-kind',
  topic: 'Keratometry',
  definition: 'With the rule, against the rule or oblique, by the steep corneal meridian.',
  inputs: {
    corneal: vector('corneal astigmatism'),
    limitDegrees: optional(quantity('limit either side of vertical and horizontal', '°', 0, 45)),
  },
  unit: '',
  domain: 'There must be some astigmatism. The steep CORNEAL meridian counts, not the axis of a correcting cylinder.',
  method:
    'steep meridian within the limit of 90: with the rule; within the limit of 180: against the rule; else oblique; the limit (30 degrees unless stated) counts as inside',
  source: { citation: 'convention; some papers use 22.5 or 45 degrees', status: 'common practice' },
  example: { input: { corneal: { magnitude: 1.5, axis: 90 } }, gives: 'with-the-rule' },
  compute: ({ corneal, limitDegrees = USUAL_LIMIT }) => {
    if (corneal.axis === null || corneal.magnitude === 0) return refused('there is no astigmatism, so it has no kind');
    if (Math.abs(meridianDifference(corneal.axis, 90)) <= limitDegrees) return found<AstigmatismKind>('with-the-rule');
    if (Math.abs(meridianDifference(corneal.axis, 180)) <= limitDegrees)
      return found<AstigmatismKind>('against-the-rule');
    return found<AstigmatismKind>('oblique');
  },
});
