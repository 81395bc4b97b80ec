import { maskIdentifiers } from './mask-identifiers.ts';

/** What a report is written from: the plain shape that `check --format json` prints. */
export type ReportSeverity = 'error' | 'warning' | 'info';

/** 1-based line and column; columns count UTF-16 units, the end stands after the last one. */
export interface ReportPlace {
  readonly line: number;
  readonly column: number;
}

export interface ReportRange {
  readonly start: ReportPlace;
  readonly end: ReportPlace;
}

export interface RelatedPlace {
  readonly message: string;
  /** The other note when the place is not in this one. */
  readonly file?: string;
  readonly range: ReportRange;
}

export interface ReportedRemark {
  readonly check: string;
  readonly severity: ReportSeverity;
  readonly message: string;
  readonly path: readonly (string | number)[];
  readonly range: ReportRange;
  readonly related: readonly RelatedPlace[];
}

export interface ReportedNote {
  /** Path with forward slashes, relative to where the command ran. */
  readonly file: string;
  readonly id: string | null;
  readonly remarks: readonly ReportedRemark[];
}

/** What a report says about a check beside its id. */
export interface ReportedCheck {
  readonly id: string;
  readonly summary: string;
  readonly why?: string;
  readonly advice?: string;
  /** Wrong side, wrong lens, wrong patient, broken seal: graver than any other error. */
  readonly gravest?: boolean;
}

export interface ReportOptions {
  readonly version: string;
  readonly failOn: 'error' | 'warning' | 'never';
  readonly checks: readonly ReportedCheck[];
}

const RANK: Readonly<Record<ReportSeverity, number>> = { error: 2, warning: 1, info: 0 };

/** Whether a remark makes the run fail. */
export function fails(severity: ReportSeverity, failOn: ReportOptions['failOn']): boolean {
  return failOn !== 'never' && RANK[severity] >= RANK[failOn];
}

/** Order by code units: the same on every machine, whatever its language. */
export function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function compareRemarks(a: ReportedRemark, b: ReportedRemark): number {
  return (
    a.range.start.line - b.range.start.line ||
    a.range.start.column - b.range.start.column ||
    compareText(a.check, b.check) ||
    compareText(a.message, b.message)
  );
}

/** Notes by file, remarks by place, so that shards and workers add up to the same report. */
export function sortReport(notes: readonly ReportedNote[]): readonly ReportedNote[] {
  return notes
    .toSorted((a, b) => compareText(a.file, b.file))
    .map((note) => ({ ...note, remarks: note.remarks.toSorted(compareRemarks) }));
}

/** Sorted, and with every message masked: what may appear in the log of a shared build machine. */
export function forSharedLog(notes: readonly ReportedNote[]): readonly ReportedNote[] {
  return sortReport(notes).map((note) => ({
    ...note,
    remarks: note.remarks.map((remark) => ({
      ...remark,
      message: maskIdentifiers(remark.message),
      path: remark.path.map((step) => (typeof step === 'string' ? maskIdentifiers(step) : step)),
      related: remark.related.map((place) => ({ ...place, message: maskIdentifiers(place.message) })),
    })),
  }));
}
