import type { Acuity, Field, Keratometry, Refraction } from '@sideport/schemas';
import { logmar, logmarScheme } from '../cell-values.ts';
import type { Cell, Column } from '../table.ts';
import { decimalsOf } from '../written-value.ts';
import { columnsOf } from './column.ts';

/** The logMAR of an acuity, and the scheme where only a scheme gives it one. */
export function logmarColumns<R>(
  name: string,
  title: string,
  acuityOf: (row: R) => Field<Acuity> | undefined,
): readonly Column<R>[] {
  const { number, text } = columnsOf<R>();
  return [
    number(`${name}_logmar`, `${title}; each letter counts 0.02`, 'logMAR', (row) => logmar(acuityOf(row))),
    text(
      `${name}_scheme`,
      `${title}: the scheme that gives counting fingers and less a logMAR; “extrapolated” is no number to average`,
      (row) => logmarScheme(acuityOf(row)),
    ),
  ];
}

/** Sphere, cylinder or axis of a refraction as typed; a plano sphere is 0. */
export function refractionPart(field: Field<Refraction> | undefined, part: 0 | 1 | 2): Cell {
  return field && decimalsOf(field.text)[part];
}

/** A keratometry as typed, where it was typed in this unit. */
export function keratometry(field: Field<Keratometry> | undefined, unit: 'D' | 'mm'): Cell {
  return field?.value.unit === unit ? field.value.typed : undefined;
}

/** The meridian of a keratometry as typed. */
export function meridian(field: Field<Keratometry> | undefined): Cell {
  return typeof field?.value.meridian === 'number' ? decimalsOf(field.text)[1] : undefined;
}
