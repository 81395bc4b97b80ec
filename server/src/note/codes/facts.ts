/** One recorded fact, with the fields of the note it comes from. */
export interface Fact<T> {
  readonly value: T;
  /** Field paths, such as `lens.placed`. */
  readonly from: readonly string[];
  /** What stands there, where the fact itself is only yes or no. */
  readonly says?: string;
}

export type Extraction = 'phacoemulsification' | 'extracapsular' | 'intracapsular';

/** What was done to an artificial lens that was already in the eye. */
export type EarlierLens = 'exchanged' | 'repositioned';

/** All that the choice of codes depends on. A missing fact is one the note does not state. */
export interface CodingFacts {
  readonly eye?: Fact<'right' | 'left'>;
  /** Kinds of cataract, in the words of the note. */
  readonly cataract: readonly Fact<string>[];
  readonly extraction?: Fact<Extraction>;
  readonly earlierLens?: Fact<EarlierLens>;
  readonly lensImplanted?: Fact<boolean>;
  /** A lens held by the sclera; only the words of the note can say that it was sutured there. */
  readonly scleralFixation?: Fact<'sutured' | 'sutures not stated'>;
  readonly tensionRing?: Fact<true>;
  readonly irisHooks?: Fact<true>;
  readonly expansionRing?: Fact<true>;
  readonly vitrectomy?: Fact<'anterior' | 'pars plana' | 'approach not stated'>;
  readonly iridotomy?: Fact<true>;
  readonly posteriorCapsuleTorn?: Fact<true>;
  /** Complications in the words of the note, the torn capsule aside. */
  readonly complications: readonly Fact<string>[];
  /** The coder's own choice as it stands in the note. */
  readonly chosen: readonly Fact<{ readonly system: string; readonly code: string }>[];
}
