import { forSharedLog, type ReportedNote, type ReportedRemark, type ReportSeverity } from './report-input.ts';

const COMMAND: Readonly<Record<ReportSeverity, string>> = { error: 'error', warning: 'warning', info: 'notice' };
const GRAVITY: readonly ReportSeverity[] = ['error', 'warning', 'info'];

/** Message part of a workflow command: percent, carriage return and line feed are written as %25, %0D, %0A. */
function escapeData(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

/** Property part of a workflow command: colon and comma as well. */
function escapeProperty(text: string): string {
  return escapeData(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}

function command(note: ReportedNote, remark: ReportedRemark): string {
  const { start, end } = remark.range;
  const properties: readonly (readonly [string, string | number])[] = [
    ['file', note.file],
    ['line', start.line],
    ['endLine', end.line],
    // Columns are only understood when the remark stays on one line.
    ...(start.line === end.line
      ? ([
          ['col', start.column],
          ['endColumn', end.column],
        ] as const)
      : []),
    ['title', remark.check],
  ];
  const list = properties.map(([name, value]) => `${name}=${escapeProperty(String(value))}`).join(',');
  return `::${COMMAND[remark.severity]} ${list}::${escapeData(remark.message)}\n`;
}

/**
 * Workflow commands that show remarks beside the lines of a change. Errors come first, because only about ten
 * annotations of a kind are shown per step.
 */
export function writeGithubCommands(notes: readonly ReportedNote[]): string {
  const ordered = forSharedLog(notes);
  return GRAVITY.flatMap((severity) =>
    ordered.flatMap((note) =>
      note.remarks.filter((remark) => remark.severity === severity).map((remark) => command(note, remark)),
    ),
  ).join('');
}
