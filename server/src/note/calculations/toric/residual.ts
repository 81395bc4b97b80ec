import { calculation } from '../calculation.ts';
import { angle, quantity, vector } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Vector } from '../quantities.ts';
import { add } from '../astigmatism/double-angle.ts';

type Given = { corneal: Vector; lensCylinderD: number; markAxis: number };

export const residualAstigmatism = calculation<Given, Vector>({
  name: 'residual-astigmatism',
  topic: 'Toric',
  definition: 'Astigmatism left at the corneal plane with the lens at the axis found; axis = steep meridian.',
  inputs: {
    corneal: vector('corneal astigmatism'),
    lensCylinderD: quantity('cylinder of the lens at the corneal plane', 'D', 0, 15),
    markAxis: angle('axis of the lens marks'),
  },
  unit: 'D',
  domain: 'Lens cylinder at the CORNEAL plane; the marks lie along the steep meridian that is to be flattened.',
  method: 'corneal vector + lens cylinder at (marks + 90)',
  source: { citation: 'double-angle vectors', status: 'derived' },
  cautions: [
    'Front keratometry alone over-corrects with-the-rule and under-corrects against-the-rule astigmatism (Goggin et al., J Refract Surg 2015, seen).',
  ],
  example: {
    input: { corneal: { magnitude: 2, axis: 90 }, lensCylinderD: 1.5, markAxis: 95 },
    gives: { magnitude: 0.584083, axis: 76.757919 },
  },
  compute: ({ corneal, lensCylinderD, markAxis }) =>
    found(add(corneal, { magnitude: lensCylinderD, axis: markAxis + 90 })),
});
