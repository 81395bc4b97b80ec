import type { Field, Keratometry, Refraction } from '@sideport/schemas';
import type { Cell } from '../table.ts';
import { decimalsOf } from '../written-value.ts';

/** Sphere, cylinder or axis of a refraction as typed; a plano sphere is 0. */
export function refractionPart(field: Field<Refraction> | undefined, part: 0 | 1 | 2): Cell {
  return field && decimalsOf(field.text.replace(/^\s*pl(?:ano)?/iu, '0'))[part];
}

/** A keratometry as typed, where it was typed in this unit. */
export function keratometry(field: Field<Keratometry> | undefined, unit: 'D' | 'mm'): Cell {
  return field?.value.unit === unit ? field.value.typed : undefined;
}

/** The meridian of a keratometry as typed. */
export function meridian(field: Field<Keratometry> | undefined): Cell {
  return typeof field?.value.meridian === 'number' ? decimalsOf(field.text)[1] : undefined;
}
