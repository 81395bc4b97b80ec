import type { ComputedName, Path, Span } from '@sideport/schemas';

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
  readonly name: ComputedName;
  /** A word or two to stand before the value; may be empty. */
  readonly label: string;
  readonly value: ComputedData;
  readonly unit: string;
  readonly inputs: { readonly [name: string]: ComputedData };
  /** The unit of each input that has one. */
  readonly inputUnits: { readonly [name: string]: string };
  readonly method: string;
  /** Where the method holds, in words. */
  readonly domain: string;
  /** The citation, and how far it was verified. */
  readonly source: string;
  /** The field it belongs beside. */
  readonly path: Path;
  readonly span: Span;
  /** Rounded as the trade does, with its unit; short enough to stand behind the line. */
  readonly display: string;
  /** Whether it is worth a place behind the line; the others stand in the explanation of the field. */
  readonly inline: boolean;
  readonly cautions: readonly string[];
}

export interface NotComputed {
  readonly name: ComputedName;
  readonly because: string;
  readonly path: Path;
}

export interface ComputedNote {
  readonly values: readonly ComputedValue[];
  readonly notComputed: readonly NotComputed[];
}
