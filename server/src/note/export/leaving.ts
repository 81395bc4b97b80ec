import type { Amendment, FollowUp, Operation } from '@sideport/schemas';
import type { CodeSuggestions } from '../codes/suggestion.ts';
import type { ComputedValue } from '../computing/computed.ts';
import type { DateChoice } from '../deidentify/dates.ts';

/** One operation as it leaves. What was computed comes from the note before anything was taken out of it. */
export interface LeavingOperation {
  readonly kind: 'operation';
  readonly note: Operation;
  readonly computed: readonly ComputedValue[];
  readonly derived: Derived;
  readonly codes?: CodeSuggestions;
  /** Amendments of this note, oldest first. */
  readonly amendments: readonly Amendment[];
  /** Whether another operation with the same id left before it. */
  readonly repeated: boolean;
}

export interface LeavingFollowUp {
  readonly kind: 'follow-up';
  readonly note: FollowUp;
  readonly computed: readonly ComputedValue[];
  /** Amendments of this visit, oldest first. */
  readonly amendments: readonly Amendment[];
  /** Whether another visit with the same id left before it. */
  readonly repeated: boolean;
}

export interface LeavingAmendment {
  readonly kind: 'amendment';
  readonly note: Amendment;
  /** Whether the set has the operation or visit that it amends, so that it leaves together with that. */
  readonly withNote: boolean;
}

export type Leaving = LeavingOperation | LeavingFollowUp | LeavingAmendment;

/** Values that need fields which may be taken out. */
export interface Derived {
  /** Years on the day of the operation. */
  readonly ageYears?: string;
  readonly durationMinutes?: string;
  /** The audit definition of posterior capsule rupture; undefined where a fact is missing. */
  readonly capsuleRupture?: boolean;
}

/** How dates stand in what leaves. */
export type LeavingDates = 'as recorded' | DateChoice;
