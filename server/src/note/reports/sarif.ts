import { fingerprintRemarks, type Fingerprinted } from './fingerprint.ts';
import {
  compareText,
  forSharedLog,
  type ReportedNote,
  type ReportOptions,
  type ReportRange,
  type ReportSeverity,
} from './report-input.ts';

const SCHEMA = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';
const LEVEL: Readonly<Record<ReportSeverity, string>> = { error: 'error', warning: 'warning', info: 'note' };

/** A file path as a URI reference: every part percent-encoded; an absolute path becomes a file URI. */
function toUri(file: string): string {
  const readable = file.replaceAll('\\', '/').replaceAll(/\p{Surrogate}/gu, '\uFFFD');
  const encoded = readable.split('/').map(encodeURIComponent).join('/');
  if (encoded.startsWith('/')) return `file://${encoded}`;
  return /^[A-Za-z]%3A\//.test(encoded) ? `file:///${encoded.replace('%3A', ':')}` : encoded.replace(/^\.\//, '');
}

function physicalLocation(file: string, range: ReportRange): object {
  return {
    artifactLocation: { uri: toUri(file) },
    region: {
      startLine: range.start.line,
      startColumn: range.start.column,
      endLine: range.end.line,
      endColumn: range.end.column,
    },
  };
}

function result(note: ReportedNote, { remark, place, ordinal }: Fingerprinted, rules: readonly string[]): object {
  return {
    ruleId: remark.check,
    ruleIndex: rules.indexOf(remark.check),
    level: LEVEL[remark.severity],
    message: { text: remark.message },
    locations: [
      {
        physicalLocation: physicalLocation(note.file, remark.range),
        logicalLocations: [{ fullyQualifiedName: remark.path.join('.'), kind: 'member' }],
      },
    ],
    ...(remark.related.length > 0 && {
      relatedLocations: remark.related.map((other, id) => ({
        id,
        message: { text: other.message },
        physicalLocation: physicalLocation(other.file ?? note.file, other.range),
      })),
    }),
    // The one key by which the best-known reader of these logs recognises a result between two runs.
    partialFingerprints: { primaryLocationLineHash: `${place}:${ordinal}` },
  };
}

function rule(id: string, options: ReportOptions): object {
  const check = options.checks.find((candidate) => candidate.id === id);
  if (check === undefined) return { id };
  const help = [check.why, check.advice].filter((part) => part !== undefined).join('\n\n');
  return {
    id,
    shortDescription: { text: check.summary },
    ...(check.why !== undefined && { fullDescription: { text: check.why } }),
    ...(help !== '' && { help: { text: help } }),
    ...(check.gravest === true && { properties: { tags: ['patient-safety'] } }),
  };
}

/** A static analysis log (SARIF 2.1.0, OASIS): one run, columns in UTF-16 units, ends exclusive. */
export function writeSarif(notes: readonly ReportedNote[], options: ReportOptions): string {
  const ordered = forSharedLog(notes);
  const rules = [...new Set(ordered.flatMap((note) => note.remarks.map((r) => r.check)))].toSorted(compareText);
  const log = {
    $schema: SCHEMA,
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: { name: 'sideport', semanticVersion: options.version, rules: rules.map((id) => rule(id, options)) },
        },
        columnKind: 'utf16CodeUnits',
        artifacts: [...new Set(ordered.map((note) => note.file))].map((file) => ({ location: { uri: toUri(file) } })),
        results: ordered.flatMap((note) => fingerprintRemarks(note).map((print) => result(note, print, rules))),
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}
