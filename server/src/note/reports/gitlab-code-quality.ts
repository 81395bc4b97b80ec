import { fingerprintRemarks, shortHash } from './fingerprint.ts';
import { forSharedLog, type ReportedNote, type ReportOptions, type ReportSeverity } from './report-input.ts';

const SEVERITY: Readonly<Record<ReportSeverity, string>> = { error: 'major', warning: 'minor', info: 'info' };

/** A code quality report: a list of remarks, each with a fingerprint that no other remark of the report has. */
export function writeGitlabCodeQuality(notes: readonly ReportedNote[], options: ReportOptions): string {
  const gravest = new Set(options.checks.filter((check) => check.gravest === true).map((check) => check.id));
  const entries = forSharedLog(notes).flatMap((note) =>
    fingerprintRemarks(note).map(({ remark, place, ordinal }) => ({
      description: remark.message,
      check_name: remark.check,
      fingerprint: shortHash(JSON.stringify([note.file, place, ordinal])),
      severity: remark.severity === 'error' && gravest.has(remark.check) ? 'critical' : SEVERITY[remark.severity],
      location: { path: note.file.replace(/^\.\//, ''), lines: { begin: remark.range.start.line } },
    })),
  );
  return `${JSON.stringify(entries, null, 2)}\n`;
}
