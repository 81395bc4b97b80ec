import { asAxis } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { quantity, refraction } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Refraction } from '../quantities.ts';

export const VERTEX = quantity('vertex distance', 'mm', 0, 25);

/** Power (D) at the cornea of a lens of `powerD` worn at `vertexMm`. */
export const atCornea = (powerD: number, vertexMm: number): number => powerD / (1 - (vertexMm / 1000) * powerD);

/** Power (D) of a lens worn at `vertexMm` that has `powerD` at the cornea. */
export const atSpectacles = (powerD: number, vertexMm: number): number => powerD / (1 + (vertexMm / 1000) * powerD);

/** Moves a refraction to the cornea, each principal meridian by itself. */
export function refractionMovedToCornea({ sphere, cylinder, axis }: Refraction, vertexMm: number): Refraction {
  const first = atCornea(sphere, vertexMm);
  if (cylinder === 0) return { sphere: first, cylinder: 0, axis: null };
  return {
    sphere: first,
    cylinder: atCornea(sphere + cylinder, vertexMm) - first,
    axis: axis === null ? null : asAxis(axis),
  };
}

const source = { citation: 'paraxial vergence', status: 'derived' } as const;
const domain = 'State the vertex distance: formulas use 12 mm, other sources 12.5, 13 or 14.';

export const powerAtCornea = calculation<{ powerD: number; vertexMm: number }, number>({
  name: 'power-at-cornea',
  topic: 'Refraction',
  definition: 'Spectacle power referred to the corneal plane.',
  inputs: { powerD: quantity('spectacle power', 'D', -40, 25), vertexMm: VERTEX },
  unit: 'D',
  domain,
  method: 'F / (1 - dF), d in metres',
  source,
  example: { input: { powerD: -10, vertexMm: 12 }, gives: -8.928571 },
  compute: ({ powerD, vertexMm }) => found(atCornea(powerD, vertexMm)),
});

export const powerAtSpectacles = calculation<{ powerD: number; vertexMm: number }, number>({
  name: 'power-at-spectacles',
  topic: 'Refraction',
  definition: 'Power at the corneal plane referred to the spectacle plane.',
  inputs: { powerD: quantity('power at the cornea', 'D', -30, 40), vertexMm: VERTEX },
  unit: 'D',
  domain,
  method: 'F / (1 + dF), d in metres',
  source,
  example: { input: { powerD: -8.928571, vertexMm: 12 }, gives: -10 },
  compute: ({ powerD, vertexMm }) => found(atSpectacles(powerD, vertexMm)),
});

export const refractionAtCornea = calculation<{ refraction: Refraction; vertexMm: number }, Refraction>({
  name: 'refraction-at-cornea',
  topic: 'Refraction',
  definition: 'The spectacle refraction referred to the corneal plane, in the cylinder form it was given in.',
  inputs: { refraction: refraction('refraction'), vertexMm: VERTEX },
  unit: 'D',
  domain,
  method: 'F / (1 - dF) for each principal meridian, d in metres',
  source,
  example: {
    input: { refraction: { sphere: -10, cylinder: -2, axis: 90 }, vertexMm: 12 },
    gives: { sphere: -8.928571, cylinder: -1.561118, axis: 90 },
  },
  compute: (given) => found(refractionMovedToCornea(given.refraction, given.vertexMm)),
});
