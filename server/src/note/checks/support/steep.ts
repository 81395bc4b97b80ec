import { asAxis, meridianDifference } from '../../calculations/angles.ts';
import type { Field, Operation, Site } from '@sideport/schemas';
import type { CheckContext } from '../check.ts';
import { mainIncision } from './course.ts';
import { astigmatismOf, isNotSquare, positionOn } from './measurements.ts';

const TOLERANCE = 10;

/** How far a meridian may lie from the steep one (degrees): the department's own figure, or 10. */
export function steepTolerance({ department }: CheckContext): number {
  return department?.thresholds?.['steep-meridian-tolerance']?.value.amount ?? TOLERANCE;
}

export interface OffSteep {
  /** The site that is off: as made, or else as planned. */
  readonly field: Field<Site>;
  readonly meridian: number;
  readonly steep: number;
  readonly off: number;
}

/** The main incision lies off the steep meridian although it was meant to lie on it. */
export function incisionOffSteep(note: Operation, context: CheckContext): OffSteep | undefined {
  const planned = note.plan?.incision;
  const field = mainIncision(note)?.at ?? planned?.at;
  const steep = astigmatismOf(note.preop?.biometry)?.axis;
  if (planned?.['on-steep-meridian']?.value !== true || field === undefined || note.eye === undefined) return undefined;
  if (steep === undefined || steep === null || isNotSquare(note.preop?.biometry)) return undefined;
  const position = positionOn(field.value, note.eye.value, note.seat);
  if (position === undefined) return undefined;
  const off = Math.abs(meridianDifference(position, steep));
  return off > steepTolerance(context) ? { field, meridian: asAxis(position), steep, off } : undefined;
}
