/** One recorded fact, with the fields of the note it comes from. */
export interface Fact<T> {
  readonly value: T;
  /** Field paths, such as `lens.placed`. */
  readonly from: readonly string[];
  /** What stands there, where the fact itself is only yes or no; for each field where they say different things. */
  readonly says?: string | readonly string[];
}

export const fact = <const T>(value: T, ...from: string[]): Fact<T> => ({ value, from });

export type Extraction = 'phacoemulsification' | 'extracapsular' | 'intracapsular';

/** What was done to an artificial lens that was already in the eye. */
export type EarlierLens = 'exchanged' | 'repositioned';

export interface ChosenCode {
  readonly system: string;
  readonly code: string;
  /** Whether the coder wrote words beside it. */
  readonly hasWords: boolean;
}

/** All that the choice of codes depends on. A missing fact is one the note does not state. */
export interface CodingFacts {
  readonly eye?: Fact<'right' | 'left'>;
  readonly whichEye?: Fact<'first' | 'second'>;
  /** Whole years on the day of the operation. */
  readonly ageYears?: number;
  /** Kinds of cataract, in the words of the note. */
  readonly cataract: readonly Fact<string>[];
  readonly extraction?: Fact<Extraction>;
  /** The operation was not done as its name says: the lens was not taken out, or nothing says how far it came. */
  readonly brokenOff?: Fact<'not done' | 'abandoned'>;
  readonly earlierLens?: Fact<EarlierLens>;
  readonly lensImplanted?: Fact<boolean>;
  /** A lens held by the sclera; only the words of the note can say that it was sutured there. */
  readonly scleralFixation?: Fact<'sutured' | 'sutures not stated'>;
  readonly tensionRing?: Fact<true>;
  /** A ring that did not stay where it was put. */
  readonly ringNotKept?: Fact<string>;
  readonly irisHooks?: Fact<true>;
  readonly expansionRing?: Fact<true>;
  readonly vitrectomy?: Fact<'anterior' | 'pars plana' | 'approach not stated'>;
  readonly iridotomy?: Fact<true>;
  /** A tear of the posterior capsule that the note documents as a complication of this operation. */
  readonly posteriorCapsuleTorn?: Fact<true>;
  /** A tear that is recorded, and why it is no complication of this operation. */
  readonly otherTear?: Fact<'not documented' | 'before the operation' | 'after the operation'>;
  /** Complications during the operation in the words of the note, the torn capsule aside. */
  readonly complications: readonly Fact<string>[];
  /** Those of after the operation. */
  readonly laterComplications: readonly Fact<string>[];
  /** The coder's own choice as it stands in the note. */
  readonly chosen: readonly Fact<ChosenCode>[];
}
