import { powerVector } from '../../calculations/refraction/power-vector.ts';
import { sphericalEquivalent } from '../../calculations/refraction/spherical-equivalent.ts';
import { transposition } from '../../calculations/refraction/transposition.ts';
import { refractionAtCornea } from '../../calculations/refraction/vertex.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { withCautions } from '../known.ts';
import type { OperationFacts } from '../operation-facts.ts';
import type { SpectacleRefraction } from '../refractions.ts';
import { result, type Result, type Spot } from '../result.ts';

const names = ['spherical-equivalent', 'power-vector', 'transposed-refraction', 'refraction-at-cornea'] as const;

function refractionResults({ refraction, vertexMm, cautions }: SpectacleRefraction, at: Spot): readonly Result[] {
  const inputs = { refraction };
  const equivalent = result('spherical-equivalent', at, inputs, sphericalEquivalent);
  if (!refraction.ok) return [equivalent];
  return [
    equivalent,
    result('power-vector', at, inputs, powerVector),
    result('transposed-refraction', at, inputs, transposition),
    result('refraction-at-cornea', at, { refraction, 'vertex-distance': vertexMm }, (given) =>
      withCautions(refractionAtCornea({ refraction: given.refraction, vertexMm: given['vertex-distance'] }), cautions),
    ),
  ];
}

export const refractionBefore: Definition<OperationFacts> = {
  names,
  compute: ({ note, refraction, spot }) => refractionResults(refraction, spot(note.preop?.refraction, note.preop?.$)),
};

export const refractionAtVisit: Definition<FollowUpFacts> = {
  names,
  compute: ({ note, refraction, spot }) => refractionResults(refraction, spot(note.refraction)),
};
