import { fails, forSharedLog, type ReportedNote, type ReportedRemark, type ReportOptions } from './report-input.ts';
import { attributes, escapeXml } from './xml.ts';

function place(file: string, remark: Pick<ReportedRemark, 'range'>): string {
  return `${file}:${remark.range.start.line}:${remark.range.start.column}`;
}

/** The remark in full: message, its place, and where the other values stand. */
function body(note: ReportedNote, remark: ReportedRemark): string {
  const others = remark.related.map((other) => `${place(other.file ?? note.file, other)}: ${other.message}`);
  return escapeXml([`${place(note.file, remark)}: ${remark.message}`, ...others].join('\n'));
}

function testCase(note: ReportedNote, remark: ReportedRemark, options: ReportOptions): string {
  const where = remark.path.length > 0 ? remark.path.join('.') : 'the note';
  const name = `${remark.check} at ${where} (line ${remark.range.start.line})`;
  const verdict = fails(remark.severity, options.failOn)
    ? `<failure${attributes({ type: remark.severity, message: remark.message })}>${body(note, remark)}</failure>`
    : `<system-out>${body(note, remark)}</system-out>`;
  return `    <testcase${attributes({ name, classname: note.file })}>\n      ${verdict}\n    </testcase>\n`;
}

/**
 * A test report (JUnit XML as the xUnit schema junit-10 describes it): a suite per note, a case per remark, one
 * passing case for a note without remarks. A remark below the fail level passes and keeps its words.
 */
export function writeJunit(notes: readonly ReportedNote[], options: ReportOptions): string {
  const suites = forSharedLog(notes).map((note) => {
    const failures = note.remarks.filter((remark) => fails(remark.severity, options.failOn)).length;
    const silent = `    <testcase${attributes({ name: 'no remarks', classname: note.file })}/>\n`;
    const cases = note.remarks.map((remark) => testCase(note, remark, options)).join('') || silent;
    const tests = Math.max(1, note.remarks.length);
    return {
      tests,
      failures,
      text: `  <testsuite${attributes({ name: note.file, tests, failures, errors: 0 })}>\n${cases}  </testsuite>\n`,
    };
  });
  const tests = suites.reduce((sum, suite) => sum + suite.tests, 0);
  const failures = suites.reduce((sum, suite) => sum + suite.failures, 0);
  const root = attributes({ name: 'sideport check', tests, failures, errors: 0 });
  const inside = suites.map((suite) => suite.text).join('');
  return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites${root}>\n${inside}</testsuites>\n`;
}
