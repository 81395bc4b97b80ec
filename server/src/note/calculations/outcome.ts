/** How far a source was verified; shown wherever the value is shown. */
export type SourceStatus = 'seen' | 'seen second-hand' | 'from memory' | 'derived' | 'common practice';

export interface Source {
  readonly citation: string;
  readonly status: SourceStatus;
}

export interface Computed<V> {
  readonly ok: true;
  readonly value: V;
  /** Unit of the value, or of every number in it; empty for words, counts and ratios. */
  readonly unit: string;
  readonly method: string;
  /** Where the method holds, in words. */
  readonly domain: string;
  readonly source: Source;
  readonly cautions: readonly string[];
}

export interface Refused {
  readonly ok: false;
  readonly because: string;
}

/** What every calculation answers: a value with its provenance, or the reason why there is none. */
export type Outcome<V> = Computed<V> | Refused;

/** What the body of a calculation answers; the calculation itself adds unit, method and source. */
export type Answer<V> = { readonly ok: true; readonly value: V; readonly cautions: readonly string[] } | Refused;

export function found<V>(value: V, cautions: readonly string[] = []): Answer<V> {
  return { ok: true, value, cautions };
}

export function refused(because: string): Refused {
  return { ok: false, because };
}
