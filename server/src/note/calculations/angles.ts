const DEGREE = Math.PI / 180;
/** Below this a direction counts as being on the mark: what is left is the noise of the arithmetic. */
export const NOISE = 1e-9;

export const sin = (degrees: number): number => Math.sin(degrees * DEGREE);
export const cos = (degrees: number): number => Math.cos(degrees * DEGREE);
export const tan = (degrees: number): number => Math.tan(degrees * DEGREE);
export const arcsin = (ratio: number): number => Math.asin(Math.min(1, Math.max(-1, ratio))) / DEGREE;
export const arccos = (ratio: number): number => Math.acos(Math.min(1, Math.max(-1, ratio))) / DEGREE;
export const arctan2 = (y: number, x: number): number => Math.atan2(y, x) / DEGREE;

/** Brings a dial position into 0 <= position < 360. */
export function asPosition(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  return turned > 360 - NOISE ? 0 : turned;
}

/** Brings an axis or a meridian into 0 < axis <= 180; the horizontal is written 180 (ISO 8429). */
export function asAxis(degrees: number): number {
  const turned = ((degrees % 180) + 180) % 180;
  return turned < NOISE ? 180 : turned;
}

/** The difference of two meridians, a - b, in -90 < difference <= 90, counter-clockwise positive. */
export function meridianDifference(a: number, b: number): number {
  const turned = asAxis(a - b);
  return turned > 90 ? turned - 180 : turned;
}
