import { asPosition } from '../calculations/angles.ts';
import { hourAt } from '../calculations/position/clock-hour.ts';

/**
 * Where a position of the ISO 8429 dial stands in the surgeon's own view, in degrees counter-clockwise from the
 * right-hand horizontal of that view. The point nearest to the surgeon is at the bottom (270). Without a seat the eye
 * is seen as by a person facing it, superior up.
 */
export function viewAngle(position: number, seat: number | undefined): number {
  return asPosition(seat === undefined ? position : position - seat + 270);
}

/** The anatomical clock hour of a position, to the half hour a surgeon would say. */
export function clockHour(position: number): number {
  const hour = Math.round(hourAt(position) * 2) / 2;
  return hour < 1 ? hour + 12 : hour;
}
