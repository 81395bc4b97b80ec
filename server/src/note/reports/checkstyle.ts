import { forSharedLog, type ReportedNote } from './report-input.ts';
import { attributes } from './xml.ts';

// The version attribute names the format's generation that readers expect, not this program.
const FORMAT_VERSION = '4.3';

/** Checkstyle XML: a file element per note that has remarks (format from memory; no official schema exists). */
export function writeCheckstyle(notes: readonly ReportedNote[]): string {
  const files = forSharedLog(notes)
    .filter((note) => note.remarks.length > 0)
    .map((note) => {
      const errors = note.remarks.map(({ range, severity, message, check }) => {
        const { line, column } = range.start;
        return `    <error${attributes({ line, column, severity, message, source: `sideport.${check}` })}/>\n`;
      });
      return `  <file${attributes({ name: note.file })}>\n${errors.join('')}  </file>\n`;
    });
  const root = attributes({ version: FORMAT_VERSION });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<checkstyle${root}>\n${files.join('')}</checkstyle>\n`;
}
