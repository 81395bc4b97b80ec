import type {
  DocumentFormattingParams,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  TextEdit,
} from 'vscode-languageserver';
import { formatLineLeft, formatNote } from '../../note/editing/format.ts';
import { formatRange } from '../../note/editing/format-range.ts';
import type { Edit } from '../../note/remark.ts';
import { forNote, type Server } from '../handlers.ts';
import type { OpenNote } from '../note-book.ts';

export function formatting(server: Server): void {
  const { connection } = server;
  connection.onDocumentFormatting(
    forNote<DocumentFormattingParams, TextEdit[]>(server, 'textDocument/formatting', [], (note) =>
      textEdits(formatNote(note.reading), note),
    ),
  );
  connection.onDocumentRangeFormatting(
    forNote<DocumentRangeFormattingParams, TextEdit[]>(
      server,
      'textDocument/rangeFormatting',
      [],
      (note, { range }) => {
        const span = { start: note.lines.offsetAt(range.start), end: note.lines.offsetAt(range.end) };
        return textEdits(formatRange(note.reading, span), note);
      },
    ),
  );
  connection.onDocumentOnTypeFormatting(
    forNote<DocumentOnTypeFormattingParams, TextEdit[]>(
      server,
      'textDocument/onTypeFormatting',
      [],
      (note, { position }) => textEdits(formatLineLeft(note.reading, note.lines.offsetAt(position)), note),
    ),
  );
}

export function textEdits(edits: readonly Edit[], { lines }: OpenNote): TextEdit[] {
  return edits.map(({ span, text }) => ({ range: lines.rangeOf(span), newText: text }));
}
