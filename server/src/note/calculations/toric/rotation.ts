import { arccos, cos, meridianDifference, sin } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { angle, quantity } from '../fields.ts';
import { found, refused } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

const topic = 'Toric';
const ROTATION = quantity('rotation from the ideal axis', '°', -90, 90);
const CORNEAL = quantity('corneal astigmatism', 'D', 0.01, 20);
const LENS = quantity('cylinder of the lens at the corneal plane', 'D', 0, 15);

export const rotationShare = calculation<{ rotation: number }, number>({
  name: 'rotation-share',
  topic,
  definition: 'Astigmatism left by rotation, as a share of the corneal astigmatism, when lens and cornea are equal.',
  inputs: { rotation: ROTATION },
  unit: '',
  domain: 'Lens cylinder equal to the corneal astigmatism at the corneal plane.',
  method: '2 sin |t|',
  source: { citation: `${CITATIONS.felipe2011}: one third left at 10 degrees`, status: 'seen' },
  example: { input: { rotation: 10 }, gives: 0.347296 },
  compute: ({ rotation }) => found(2 * sin(Math.abs(rotation))),
});

type Pair = { cornealD: number; lensD: number };

export const rotationEffect = calculation<Pair & { rotation: number }, number>({
  name: 'rotation-effect',
  topic,
  definition: 'Astigmatism left when a toric lens is turned away from the steep meridian.',
  inputs: { cornealD: CORNEAL, lensD: LENS, rotation: ROTATION },
  unit: 'D',
  domain: 'Both cylinders at the corneal plane; a regular cornea.',
  method: '√(C² + L² - 2 C L cos 2t)',
  source: { citation: 'double-angle vectors', status: 'derived' },
  example: { input: { cornealD: 2, lensD: 1.5, rotation: 5 }, gives: 0.584083 },
  compute: ({ cornealD, lensD, rotation }) =>
    found(Math.sqrt(Math.max(0, cornealD ** 2 + lensD ** 2 - 2 * cornealD * lensD * cos(2 * rotation)))),
});

export const annullingRotation = calculation<Pair, number>({
  name: 'annulling-rotation',
  topic,
  definition: 'Rotation at which the lens leaves as much astigmatism as the cornea had: turned further, it does harm.',
  inputs: { cornealD: CORNEAL, lensD: LENS },
  unit: '°',
  domain: 'Lens cylinder at most twice the corneal astigmatism; beyond that the lens over-corrects at any axis.',
  method: 'cos 2t = r / 2, r = lens / cornea',
  source: { citation: CITATIONS.felipe2011, status: 'seen' },
  example: { input: { cornealD: 2, lensD: 2 }, gives: 30 },
  compute: ({ cornealD, lensD }) =>
    lensD > 2 * cornealD
      ? refused('the lens has more than twice the astigmatism of the cornea: it over-corrects at any axis')
      : found(arccos(lensD / cornealD / 2) / 2),
});

export const lensRotation = calculation<{ meant: number; found: number }, number>({
  name: 'lens-rotation',
  topic,
  definition: 'How far the marks of a toric lens lie from the axis meant; counter-clockwise positive.',
  inputs: { meant: angle('the axis meant'), found: angle('the axis found') },
  unit: '°',
  domain: 'Axes, not positions: the two ends of the marks are alike, so a turn is at most 90 degrees.',
  method: 'axis found - axis meant, from -90 to 90',
  source: { citation: 'arithmetic', status: 'derived' },
  example: { input: { meant: 175, found: 4 }, gives: 9 },
  compute: ({ meant, found: seen }) => found(meridianDifference(seen, meant)),
});
