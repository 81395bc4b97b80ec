/** A place in the text that was read, in UTF-16 units. */
export interface LabelSpan {
  readonly start: number;
  readonly end: number;
}

/** What a part of a label tells. `other` covers everything a record of a lens has no field for. */
export type LabelPartKind =
  'device-identifier' | 'labeller' | 'lot' | 'serial' | 'expiry' | 'made' | 'quantity' | 'check' | 'other';

/** One part of a label: `key` is the standard's own identifier in front of the value (`17`, `$$`, `16D`). */
export interface LabelPart {
  readonly kind: LabelPartKind;
  readonly key: string;
  readonly title: string;
  readonly value: string;
  /** Where the value stands in the text that was read. Empty only for an empty value. */
  readonly span: LabelSpan;
  /** ISO 8601 date; year and month only where the label leaves the day open. */
  readonly date?: string;
}

export interface LabelFault {
  readonly fault: LabelFaultName;
  readonly severity: 'error' | 'warning';
  readonly message: string;
  readonly span: LabelSpan;
}

export type LabelFaultName =
  | 'label-not-recognised'
  | 'label-symbology-not-gs1'
  | 'label-identifier-unknown'
  | 'label-bracket-not-closed'
  | 'label-text-outside-parts'
  | 'label-space'
  | 'label-value-missing'
  | 'label-value-length'
  | 'label-value-character'
  | 'label-check-digit'
  | 'label-date'
  | 'label-device-number-missing'
  | 'label-part-needs-another'
  | 'label-parts-exclude-each-other'
  | 'label-part-repeated'
  | 'label-separator-probably-missing';

/** What a label says, with its faults; everything that could be read is there even when there are faults. */
export interface LabelReading {
  readonly standard: 'gs1' | 'hibc' | 'unknown';
  /** How the text was written: by hand with brackets, or as a scanner sends it. */
  readonly form: 'bracketed' | 'scanned';
  readonly parts: readonly LabelPart[];
  readonly faults: readonly LabelFault[];
}

/** The value of the first part of a kind, if the label has one. */
export function labelValue(reading: LabelReading, kind: LabelPartKind): string | undefined {
  const part = reading.parts.find((candidate) => candidate.kind === kind);
  return part && (part.date ?? part.value);
}
