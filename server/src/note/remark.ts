import type { Path, Span } from '@sideport/schemas';

export type Severity = 'error' | 'warning' | 'info';

/** A change of the text that answers a remark. A safe fix cannot change what is meant; the others want a look. */
export interface Fix {
  readonly title: string;
  readonly safety: 'safe' | 'needs-review';
  readonly edits: readonly Edit[];
}

/** Replaces the text of a span; an empty span inserts. */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** Another place that a remark speaks of; `file` where it stands in another note of the set. */
export interface Related {
  readonly message: string;
  readonly span: Span;
  readonly file?: string;
}

/** What a check says about a note. Its span is never empty and never outside the text. */
export interface Remark {
  /** The id of the check that speaks. */
  readonly check: string;
  readonly severity: Severity;
  readonly message: string;
  readonly span: Span;
  readonly path: Path;
  readonly related: readonly Related[];
  readonly fixes: readonly Fix[];
}

/** How grave something unfinished is: a note to self in a plan, a gap in a draft, an error in a final note. */
export function severityOfUnfinished(status: 'planned' | 'draft' | 'final'): Severity {
  return status === 'final' ? 'error' : status === 'draft' ? 'warning' : 'info';
}
