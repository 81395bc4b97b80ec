import { calculation } from '../calculation.ts';
import { angle, refraction } from '../fields.ts';
import { found } from '../outcome.ts';
import { powerAlong } from './power-at-meridian.ts';
import type { PowerVector, Refraction } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';
import { toPowerVector, toRefraction } from './power-vector.ts';
import { refractionMovedToCornea, VERTEX } from './vertex.ts';

type Given = { before: Refraction; after: Refraction; vertexMm: number };

const source = { citation: CITATIONS.holladay1992, status: 'from memory' } as const;
const domain = 'Change of the correcting refraction; the change of the eye has the opposite sign.';
const change: Refraction = { sphere: 1.214364, cylinder: -1.447887, axis: 173.291601 };
const example: Given = {
  before: { sphere: -1, cylinder: -0.5, axis: 90 },
  after: { sphere: -0.25, cylinder: -1, axis: 170 },
  vertexMm: 12,
};
const inputs = { before: refraction('refraction before'), after: refraction('refraction after'), vertexMm: VERTEX };

function changeAtCornea({ before, after, vertexMm }: Given): PowerVector {
  const then = toPowerVector(refractionMovedToCornea(before, vertexMm));
  const now = toPowerVector(refractionMovedToCornea(after, vertexMm));
  return { m: now.m - then.m, j0: now.j0 - then.j0, j45: now.j45 - then.j45 };
}

export const refractiveChangeVector = calculation<Given, PowerVector>({
  name: 'refractive-change-vector',
  topic: 'Refraction',
  definition: 'Whole change of the refraction at the corneal plane, sphere included, as a power vector.',
  inputs,
  unit: 'D',
  domain,
  method: 'both refractions moved to the cornea, power vectors subtracted, after - before',
  source,
  example: { input: example, gives: { m: 0.49042, j0: 0.704186, j45: -0.167979 } },
  compute: (given) => found(changeAtCornea(given)),
});

export const refractiveChange = calculation<Given, Refraction>({
  name: 'refractive-change',
  topic: 'Refraction',
  definition: 'Whole change of the refraction at the corneal plane, sphere included, in minus-cylinder form.',
  inputs,
  unit: 'D',
  domain,
  method: 'both refractions moved to the cornea, power vectors subtracted, after - before',
  source,
  example: { input: example, gives: change },
  compute: (given) => found(toRefraction(changeAtCornea(given))),
});

type AtWound = { change: Refraction; wound: number };
const atWound = {
  change: refraction('refractive change'),
  wound: angle('meridian of the wound'),
};

export const changeWithTheWound = calculation<AtWound, number>({
  name: 'change-with-the-wound',
  topic: 'Refraction',
  definition: 'Change of the refraction along the meridian of the wound.',
  inputs: atWound,
  unit: 'D',
  domain,
  method: 'power of the change along the wound meridian',
  source,
  example: { input: { change, wound: 90 }, gives: -0.213766 },
  compute: (given) => found(powerAlong(given.change, given.wound)),
});

export const changeAgainstTheWound = calculation<AtWound, number>({
  name: 'change-against-the-wound',
  topic: 'Refraction',
  definition: 'Change of the refraction at 90 degrees to the wound.',
  inputs: atWound,
  unit: 'D',
  domain,
  method: 'power of the change at 90 degrees to the wound meridian',
  source,
  example: { input: { change, wound: 90 }, gives: 1.194606 },
  compute: (given) => found(powerAlong(given.change, given.wound + 90)),
});
