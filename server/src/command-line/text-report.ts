import type { ReportedNote, ReportedRemark, ReportSeverity } from '../note/reports/report-input.ts';
import { summaryOf } from './summary.ts';

const CODES: Readonly<Record<ReportSeverity | 'quiet', string>> = {
  error: '\u001b[31m',
  warning: '\u001b[33m',
  info: '\u001b[36m',
  quiet: '\u001b[2m',
};
const PLAIN = '\u001b[0m';

/** Remarks to read: one line each with its place first, the other places below it, a count at the end. */
export function textReport(notes: readonly ReportedNote[], options: { readonly colour: boolean }): string {
  if (notes.every(({ remarks }) => remarks.length === 0)) return '';
  const { colour } = options;
  const paint = (code: keyof typeof CODES, text: string) => (colour ? `${CODES[code]}${text}${PLAIN}` : text);
  const lines = notes.flatMap((note) => note.remarks.flatMap((remark) => linesOf(note.file, remark, paint)));
  return `${lines.join('\n')}\n\n${counted(notes)}\n`;
}

function linesOf(
  file: string,
  { range, severity, message, check, related }: ReportedRemark,
  paint: (code: keyof typeof CODES, text: string) => string,
): string[] {
  const { line, column } = range.start;
  return [
    `${file}:${line}:${column}: ${paint(severity, severity)}: ${message} ${paint('quiet', `[${check}]`)}`,
    ...related.map(
      (place) => `    ${place.file ?? file}:${place.range.start.line}:${place.range.start.column}: ${place.message}`,
    ),
  ];
}

function counted(notes: readonly ReportedNote[]): string {
  const { errors, warnings, infos, withRemarks } = summaryOf(notes);
  const counts = [many(errors, 'error'), many(warnings, 'warning'), many(infos, 'info')].filter((text) => text !== '');
  const where = notes.length === 1 ? 'one file' : `${withRemarks} of ${notes.length} files`;
  return `${counts.join(', ')} in ${where}. What a check means: sideport explain CHECK`;
}

function many(count: number, word: string): string {
  return count === 0 ? '' : `${count} ${word}${count === 1 ? '' : 's'}`;
}
