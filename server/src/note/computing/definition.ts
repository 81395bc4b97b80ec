import type { ComputedName } from '@sideport/schemas';
import type { Result } from './result.ts';

/** How some computed values come from the facts of a note. Nothing is returned for a value that has no bearing on it. */
export interface Definition<F> {
  readonly names: readonly ComputedName[];
  readonly compute: (facts: F) => readonly Result[];
  /** The sections that its values can stand beside; said where they take long to compute. Nothing said: any place. */
  readonly beside?: readonly string[];
}
