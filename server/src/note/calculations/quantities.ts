// Types, not interfaces: a type passes as plain JSON data, an interface does not.

/** The eye operated on. */
export type Eye = 'right' | 'left';

/** A cylinder as magnitude (D, never negative) and axis (degrees, 0 < axis <= 180); a zero cylinder has no axis. */
export type Vector = {
  readonly magnitude: number;
  readonly axis: number | null;
};

/** A sphere with a cylinder (D) in either cylinder form; `axis` in degrees, null when there is no cylinder. */
export type Refraction = {
  readonly sphere: number;
  readonly cylinder: number;
  readonly axis: number | null;
};

/** A power vector in dioptres: mean sphere and the two crossed cylinders at 0 and at 45 degrees. */
export type PowerVector = {
  readonly m: number;
  readonly j0: number;
  readonly j45: number;
};
