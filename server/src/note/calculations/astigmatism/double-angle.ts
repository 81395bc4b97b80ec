import { arctan2, asAxis, cos, sin } from '../angles.ts';
import type { Vector } from '../quantities.ts';

/** A cylinder as a point of the double-angle plane, in dioptres. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Below this magnitude (D) a cylinder is the noise of the arithmetic: its axis is undefined, not some number. */
const NO_CYLINDER = 1e-9;

export function toPoint({ magnitude, axis }: Vector): Point {
  if (axis === null) return { x: 0, y: 0 };
  return { x: magnitude * cos(2 * axis), y: magnitude * sin(2 * axis) };
}

export function toVector({ x, y }: Point): Vector {
  const magnitude = Math.hypot(x, y);
  if (magnitude < NO_CYLINDER) return { magnitude: 0, axis: null };
  return { magnitude, axis: asAxis(arctan2(y, x) / 2) };
}

export function add(a: Vector, b: Vector): Vector {
  const p = toPoint(a);
  const q = toPoint(b);
  return toVector({ x: p.x + q.x, y: p.y + q.y });
}

/** The vector that turns `from` into `to`. */
export function difference(to: Vector, from: Vector): Vector {
  const p = toPoint(to);
  const q = toPoint(from);
  return toVector({ x: p.x - q.x, y: p.y - q.y });
}

/** How much of a cylinder acts along a meridian: +magnitude when it lies there, -magnitude at 90 degrees to it. */
export function componentAlong({ magnitude, axis }: Vector, meridian: number): number {
  return axis === null ? 0 : magnitude * cos(2 * (axis - meridian));
}

/** How much of a cylinder acts at 45 degrees counter-clockwise of a meridian. */
export function componentAcross({ magnitude, axis }: Vector, meridian: number): number {
  return axis === null ? 0 : magnitude * sin(2 * (axis - meridian));
}
