import type { Field, Keratometry as Written, Quantity } from '@sideport/schemas';
import { cornealAstigmatism } from '../calculations/keratometry/corneal-astigmatism.ts';
import { powerOfRadius, USUAL_INDEX } from '../calculations/keratometry/index-of-refraction.ts';
import { meanKeratometry } from '../calculations/keratometry/mean.ts';
import type { Meridian } from '../calculations/keratometry/meridians.ts';
import type { Outcome } from '../calculations/outcome.ts';
import type { Vector } from '../calculations/quantities.ts';
import { from, missing, type Known } from './known.ts';

interface KeratometryFields {
  readonly k1?: Field<Written>;
  readonly k2?: Field<Written>;
  readonly index?: Field<Quantity>;
}

/** One cornea as measured, in the index of its keratometer and in the usual one. */
export interface Cornea {
  readonly index: number;
  readonly k1: Known<Meridian>;
  readonly k2: Known<Meridian>;
  readonly mean: Outcome<number>;
  readonly astigmatism: Outcome<Vector>;
  /** Under index 1.3375, which the lens formulas expect and two visits are compared in. */
  readonly usual: {
    readonly k1: Known<Meridian>;
    readonly k2: Known<Meridian>;
    readonly mean: Outcome<number>;
    readonly astigmatism: Outcome<Vector>;
  };
}

function meridianOf(field: Field<Written> | undefined, name: string, index: number, own: number): Known<Meridian> {
  if (field === undefined) return missing(name);
  const { amount, unit, meridian } = field.value;
  const radiusMm = unit === 'mm' ? amount : powerOfRadius(amount, own);
  const power = unit === 'D' && index === own ? amount : powerOfRadius(radiusMm, index);
  return { ok: true, value: { power, axis: meridian }, unit: 'D' };
}

function corneaUnder(fields: KeratometryFields, index: number, own: number): Cornea['usual'] {
  const k1 = meridianOf(fields.k1, 'K1', index, own);
  const k2 = meridianOf(fields.k2, 'K2', index, own);
  return {
    k1,
    k2,
    mean: from({ k1, k2 }, (k) => meanKeratometry({ k1D: k.k1.power, k2D: k.k2.power })),
    astigmatism: from({ k1, k2 }, cornealAstigmatism),
  };
}

/** Reads keratometry of one examination; the index is the note's, else the department's, else 1.3375. */
export function corneaOf(fields: KeratometryFields | undefined, departmentIndex: number | undefined): Cornea {
  const given = fields ?? {};
  const index = given.index?.value.amount ?? departmentIndex ?? USUAL_INDEX;
  const own = corneaUnder(given, index, index);
  return { index, ...own, usual: index === USUAL_INDEX ? own : corneaUnder(given, USUAL_INDEX, index) };
}
