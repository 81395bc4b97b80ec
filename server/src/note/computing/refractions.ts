import type { Field, Quantity, Refraction as Written } from '@sideport/schemas';
import type { Refraction } from '../calculations/quantities.ts';
import { known, type Known } from './known.ts';

/** Vertex distance that the note format names where none is written, mm. */
export const USUAL_VERTEX = 12;

/** A spectacle refraction as written, with the vertex distance it is taken at. */
export interface SpectacleRefraction {
  readonly refraction: Known<Refraction>;
  readonly vertexMm: Known<number>;
  /** Said where the distance was not written in the note. */
  readonly cautions: readonly string[];
}

interface RefractionFields {
  readonly refraction?: Field<Written>;
  readonly 'vertex-distance'?: Field<Quantity>;
}

export function refractionOf(
  fields: RefractionFields | undefined,
  departmentVertex: number | undefined,
): SpectacleRefraction {
  const written = fields?.['vertex-distance']?.value.amount;
  const vertexMm = written ?? departmentVertex ?? USUAL_VERTEX;
  const whose = departmentVertex === undefined ? 'the usual' : "the department's";
  return {
    refraction: known(fields?.refraction?.value, 'the refraction', 'D'),
    vertexMm: { ok: true, value: vertexMm, unit: 'mm' },
    cautions: written === undefined ? [`No vertex distance is written; ${whose} ${vertexMm} mm is taken.`] : [],
  };
}
