import type { Span } from '@sideport/schemas';

export type ProposalKind = 'field' | 'section' | 'whole section' | 'word' | 'value' | 'unit' | 'reference' | 'absence';

/** One thing that could be written at the cursor. */
export interface Proposal {
  readonly label: string;
  readonly kind: ProposalKind;
  /** A few words beside the label. */
  readonly detail?: string;
  /** A sentence or two, in plain words. */
  readonly explanation?: string;
  /** Lines end at \n and carry their own indentation. With `snippet`, places are written as the protocol's grammar has it. */
  readonly insert: string;
  readonly snippet?: boolean;
  /** What is replaced; on one line, and the cursor stands in it or at its end. */
  readonly replace: Span;
  /** What the typed text is compared with, where that is not the label. */
  readonly filter?: string;
  /** Whether something can be proposed again behind what was inserted. */
  readonly more: boolean;
}

/** Proposals in the order in which they are to be shown. */
export type Proposals = readonly Proposal[];

/** Text that stands in a snippet as it is. */
export function snippetText(text: string): string {
  return text.replace(/[\\$}]/gu, String.raw`\$&`);
}
