import type { Notation } from '../notation/notation.ts';

/** Words that say why a field has no value. “not recorded” is understood everywhere; the others where a field says so. */
export type Absence = 'none' | 'not done' | 'not recorded' | 'not applicable';

/** What the guide knows about one field, section or list. */
export interface Guide {
  readonly label: string;
  /** One sentence a surgeon understands. */
  readonly meaning: string;
  readonly example?: string;
  /** Who asks for it, or where the term comes from. */
  readonly source?: string;
  /** Outside these limits, in the field's unit, a value is an error of writing. */
  readonly possible?: readonly [number, number];
  /** Outside these limits a value is unusual: a question, never an error. */
  readonly usual?: readonly [number, number];
  /** Where the limits come from; "common practice, no source" where that is the truth. */
  readonly limitsSource?: string;
  /** Names by which the field is called when spoken. */
  readonly spoken?: readonly string[];
  /** Words besides “not recorded” that say why there is no value. */
  readonly says?: readonly Absence[];
  /** The order in which the field is written, where it differs from the order of declaration. */
  readonly prose?: boolean;
}

/** A guide together with the notation of a value. */
export interface ValueGuide extends Guide {
  readonly notation: Notation<unknown>;
}
