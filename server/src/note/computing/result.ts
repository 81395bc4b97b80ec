import type { ComputedName, Path, Span } from '@sideport/schemas';
import type { Outcome } from '../calculations/outcome.ts';
import type { ComputedData } from './computed.ts';
import { from, type Known, type ValuesOf } from './known.ts';

/** Where a value is shown: beside a field, or beside the key of a section. */
export interface Spot {
  readonly path: Path;
  readonly span: Span;
}

interface Placed {
  readonly path: Path;
  readonly span: Span;
  readonly key: Span | null;
  readonly text?: string;
}

/** The place of a field or, of a section, of its key, so that a value stands on one line. */
export function spotOf(place: Placed): Spot {
  const group = place.text === undefined && place.key !== null;
  return { path: place.path, span: group ? place.key : place.span };
}

/** Finds the first place that a note has, of several wished for. */
export type SpotFinder = (...wished: readonly (Placed | undefined)[]) => Spot;

/** Places are wished for first, then those that every note has. */
export function spotIn(...always: readonly [...(Placed | undefined)[], Placed]): SpotFinder {
  return (...wished) => {
    for (const place of [...wished, ...always]) if (place !== undefined) return spotOf(place);
    return { path: [], span: { start: 0, end: 0 } };
  };
}

/** What a definition makes: a value or the reason why not, its inputs and its place. */
export interface Result {
  readonly name: ComputedName;
  readonly at: Spot;
  readonly inputs: Readonly<Record<string, Known<ComputedData>>>;
  readonly outcome: Outcome<ComputedData>;
  /** Overrides whether the value stands behind the line. */
  readonly inline?: boolean;
}

type PlainInputs = Readonly<Record<string, Known<ComputedData>>>;

/** A result that is calculated from known inputs. */
export function result<I extends PlainInputs>(
  name: ComputedName,
  at: Spot,
  inputs: I,
  calculate: (values: ValuesOf<I>) => Outcome<ComputedData>,
  options: { readonly inline?: boolean } = {},
): Result {
  return { name, at, inputs, outcome: from(inputs, calculate), ...options };
}
