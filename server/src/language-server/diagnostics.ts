import { DiagnosticSeverity, type Diagnostic, type DiagnosticRelatedInformation } from 'vscode-languageserver';
import type { Fix, Related, Remark } from '../note/remark.ts';
import type { ClientCan } from './client-can.ts';
import { lineIndex, type LineIndex } from './line-index.ts';
import type { OpenNote } from './note-book.ts';
import type { TextEdit } from 'vscode-languageserver';

export const SOURCE = 'sideport';
const SEVERITIES = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  info: DiagnosticSeverity.Information,
} as const;

/** What a diagnostic carries, so that its fixes need no second review. */
export interface Carried {
  /** The version of the text that the fixes are for: in another one their places may be others. */
  readonly version: number;
  readonly fixes: readonly CarriedFix[];
}

export interface CarriedFix {
  readonly title: string;
  readonly safety: Fix['safety'];
  readonly edits: readonly TextEdit[];
}

/** The remarks of a note as the protocol has them: same words, same order, same severity. */
export function diagnosticsOf(note: OpenNote, can: ClientCan): Diagnostic[] {
  return note.remarks.map((remark) => diagnosticOf(remark, note, can));
}

function diagnosticOf(remark: Remark, note: OpenNote, can: ClientCan): Diagnostic {
  const related = remark.related.flatMap((each) => relatedPlace(each, note));
  const diagnostic: Diagnostic = {
    range: note.lines.rangeOf(remark.span),
    severity: SEVERITIES[remark.severity],
    code: remark.check,
    source: SOURCE,
    message: can.relatedPlaces ? remark.message : withPlaces(remark.message, related),
  };
  if (can.relatedPlaces && related.length > 0) diagnostic.relatedInformation = related;
  // The page of the check comes from this server; an editor that cannot show it only shows the name.
  if (can.codeLinks) diagnostic.codeDescription = { href: `${SOURCE}:/checks/${remark.check}.md` };
  if (remark.fixes.length > 0) {
    const data: Carried = { version: note.version, fixes: remark.fixes.map((fix) => carried(fix, note.lines)) };
    diagnostic.data = data;
  }
  return diagnostic;
}

export function carried({ title, safety, edits }: Fix, lines: LineIndex): CarriedFix {
  return { title, safety, edits: edits.map(({ span, text }) => ({ range: lines.rangeOf(span), newText: text })) };
}

function relatedPlace({ message, span, file }: Related, note: OpenNote): DiagnosticRelatedInformation[] {
  if (file === undefined) return [{ message, location: { uri: note.uri, range: note.lines.rangeOf(span) } }];
  const uri = note.set?.uriOf(file);
  const text = note.set?.open(file)?.text;
  if (uri === undefined || text === undefined) return [];
  return [{ message, location: { uri, range: lineIndex(text).rangeOf(span) } }];
}

/** Where an editor cannot show other places, the sentence names their lines. */
function withPlaces(message: string, related: readonly DiagnosticRelatedInformation[]): string {
  const places = related.map(({ message: what, location }) => `${what} (line ${location.range.start.line + 1})`);
  return places.length === 0 ? message : `${message} See: ${places.join('; ')}.`;
}
