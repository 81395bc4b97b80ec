import type { Path, Span } from '@sideport/schemas';

/** A magnitude with an axis in degrees (1 to 180); the axis of a zero magnitude is undefined and null. */
export interface ComputedVector {
  readonly magnitude: number;
  readonly axis: number | null;
}

export type ComputedData =
  | number
  | string
  | boolean
  | null
  | ComputedVector
  | readonly ComputedData[]
  | { readonly [key: string]: ComputedData };

/** A number derived from recorded fields, with all that it rests on. */
export interface ComputedValue {
  readonly name: string;
  readonly value: ComputedData;
  readonly unit: string;
  readonly inputs: { readonly [name: string]: ComputedData };
  readonly method: string;
  readonly source: string;
  /** The field it belongs beside. */
  readonly path: Path;
  readonly span: Span;
  /** Rounded as the trade does, with its unit; short enough to stand behind the line. */
  readonly display: string;
  readonly cautions: readonly string[];
}

export interface NotComputed {
  readonly name: string;
  readonly because: string;
  readonly path: Path;
}

export interface ComputedNote {
  readonly values: readonly ComputedValue[];
  readonly notComputed: readonly NotComputed[];
}
