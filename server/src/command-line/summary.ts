import type { ReportedNote, ReportSeverity } from '../note/reports/report-input.ts';

export interface Summary {
  readonly notes: number;
  readonly withRemarks: number;
  readonly errors: number;
  readonly warnings: number;
  readonly infos: number;
}

/** What a run found, in numbers. */
export function summaryOf(notes: readonly ReportedNote[]): Summary {
  const count = (severity: ReportSeverity) =>
    notes.reduce((sum, note) => sum + note.remarks.filter((remark) => remark.severity === severity).length, 0);
  return {
    notes: notes.length,
    withRemarks: notes.filter((note) => note.remarks.length > 0).length,
    errors: count('error'),
    warnings: count('warning'),
    infos: count('info'),
  };
}
