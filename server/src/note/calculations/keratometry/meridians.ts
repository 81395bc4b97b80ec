import { meridianDifference } from '../angles.ts';
import { angle, part, quantity, shaped, type Field } from '../fields.ts';

/** Keratometry of one meridian: power in D (index 1.3375) and the meridian in degrees, null when not recorded. */
export type Meridian = {
  readonly power: number;
  readonly axis: number | null;
};

export interface Keratometry {
  readonly k1: Meridian;
  readonly k2: Meridian;
}

const POWER = quantity('keratometry', 'D', 30, 70);

export function meridianField(label: string): Field {
  const meridian = angle(`the meridian of ${label}`);
  return shaped(label, 'power 30 to 70 D, meridian in degrees or not recorded', (value) => {
    const axis = part(value, 'axis');
    return POWER.fault(part(value, 'power')) ?? (axis === null ? undefined : meridian.fault(axis));
  });
}

/** How far from 90 degrees apart the two principal meridians were recorded; 0 when one of them is not recorded. */
export function awayFromSquare({ k1, k2 }: Keratometry): number {
  if (k1.axis === null || k2.axis === null) return 0;
  return 90 - Math.abs(meridianDifference(k1.axis, k2.axis));
}
