/** A note in words, before it takes the form of text, a page or a printed sheet. */
export interface ProseDocument {
  readonly title: string;
  /** Patient and note, for every page: pages of a record get separated. */
  readonly reference: string;
  /** What a reader must know before anything else: a draft, an amended note, no signature. */
  readonly notices: readonly string[];
  /** Who, when, which eye. */
  readonly facts: readonly Fact[];
  readonly sections: readonly ProseSection[];
  readonly signatures: readonly string[];
  /** What the reader of any such document is told at its foot. */
  readonly cautions: readonly string[];
}

export interface Fact {
  readonly label: string;
  readonly text: string;
}

export interface ProseSection {
  /** Stable name, for links and for other formats. */
  readonly id: string;
  readonly heading: string;
  readonly paragraphs: readonly string[];
  /** Computed values that belong here, each with its cautions. */
  readonly computed: readonly ComputedLine[];
  /** What was changed by amendments; the text above is the original. */
  readonly amended: readonly string[];
}

export interface ComputedLine {
  readonly name: string;
  readonly text: string;
  readonly cautions: readonly string[];
}
