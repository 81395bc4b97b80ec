import type { Token } from './tokens.ts';

/** What a slot of a phrase holds: its text in the note's notation, and the position after it. */
export interface Held {
  readonly text: string;
  readonly end: number;
  /** Only sounds like it, or could be read in another way: never more than a proposal. */
  readonly heard: boolean;
}

/** Reads what a slot can hold from a token on, in every way that is possible. */
export type Reader = (tokens: readonly Token[], at: number) => readonly Held[];

export function sure(text: string, end: number): Held {
  return { text, end, heard: false };
}
