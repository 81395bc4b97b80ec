export interface NeutralField {
  readonly key: string;
  readonly value: unknown;
  readonly start: number;
  readonly end: number;
  readonly state: 'filled' | 'proposed' | 'unresolved';
}

export interface Neutral {
  readonly fields: readonly NeutralField[];
  readonly flags: readonly { readonly key: string; readonly reason: string }[];
  readonly unmatched: readonly { readonly start: number; readonly end: number }[];
}

export function toNeutral(result: unknown): Neutral;
