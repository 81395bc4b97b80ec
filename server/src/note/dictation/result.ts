import type { NotePath } from './paths.ts';

export type ValueState = 'filled' | 'proposed' | 'unresolved';

/** A part of a value that was put together from several stretches of the dictation. */
export interface ValuePart {
  readonly value: string;
  readonly start: number;
  readonly end: number;
}

/** One value that the dictation gives to the note; offsets are UTF-16 offsets in the dictation, half open. */
export interface DictatedValue {
  readonly path: NotePath;
  /** In the note's notation; null where the dictation contradicts itself. */
  readonly value: string | null;
  /** The words it was read from. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly state: ValueState;
  readonly because: string;
  readonly parts?: readonly ValuePart[];
  /** Only understood by its sound, or spoken against elsewhere: no second source is enough to fill it. */
  readonly doubted?: boolean;
}

export interface Unmatched {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Values that contradict each other: the surgeon decides. */
export interface Conflict {
  readonly path: NotePath;
  readonly because: string;
  /** What the note says already, where that is what differs. */
  readonly inNote?: string;
  readonly candidates: readonly {
    readonly value: string;
    readonly text: string;
    readonly start: number;
    readonly end: number;
  }[];
}

/** A value that a word of correction withdrew. */
export interface Withdrawn {
  readonly path: NotePath;
  readonly value: string;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** What a dictation says: the JSON of `sideport dictate`. */
export interface DictationResult {
  readonly version: 1;
  readonly values: readonly DictatedValue[];
  readonly unmatched: readonly Unmatched[];
  readonly conflicts: readonly Conflict[];
  readonly withdrawn: readonly Withdrawn[];
}
