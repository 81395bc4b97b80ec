import {
  ResponseError,
  ErrorCodes,
  type PrepareRenameParams,
  type Range,
  type RenameParams,
  type TextDocumentEdit,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import { mentionAt } from '../../note/editing/mentions.ts';
import { renameIn, whyNotName } from '../../note/editing/rename.ts';
import { forNote, type Server } from '../handlers.ts';
import { lineIndex } from '../line-index.ts';
import type { OpenNote } from '../note-book.ts';
import { textsNaming } from '../set-mentions.ts';

const SIGNED = 'signed';

/** Gives a note, a member of staff, a lens model or a patient another name throughout the set. */
export function renaming(server: Server): void {
  const { connection } = server;
  connection.onPrepareRename(
    forNote<PrepareRenameParams, { range: Range; placeholder: string } | null>(
      server,
      'textDocument/prepareRename',
      null,
      (note, { position }) => {
        const mention = mentionAt(note.reading, note.lines.offsetAt(position));
        return mention === undefined ? null : { range: note.lines.rangeOf(mention.span), placeholder: mention.name };
      },
    ),
  );
  const rename = forNote<RenameParams, WorkspaceEdit | ResponseError | null>(
    server,
    'textDocument/rename',
    null,
    async (note, { position, newName }) => {
      const mention = mentionAt(note.reading, note.lines.offsetAt(position));
      if (mention === undefined) return null;
      const why = whyNotName(newName);
      if (why !== undefined) return new ResponseError(ErrorCodes.InvalidParams, why);
      const texts = await textsNaming(server, note, mention.name);
      const changes = texts.flatMap(({ uri, reading }): Change[] => {
        const lines = lineIndex(reading.text);
        const edits = renameIn(reading, mention, newName).map(({ span, text }) => ({
          range: lines.rangeOf(span),
          newText: text,
        }));
        const signed = reading.kind !== 'department' && (reading.note?.signed?.items.length ?? 0) > 0;
        return edits.length === 0 ? [] : [{ uri, edits, signed }];
      });
      return editOf(changes, note, server);
    },
  );
  connection.onRenameRequest(rename);
}

interface Change {
  readonly uri: string;
  readonly edits: readonly TextEdit[];
  readonly signed: boolean;
}

function editOf(changes: readonly Change[], note: OpenNote, server: Server): WorkspaceEdit {
  const can = server.can();
  if (!can.versionedEdits) return { changes: Object.fromEntries(changes.map(({ uri, edits }) => [uri, [...edits]])) };
  const documentChanges = changes.map(({ uri, edits, signed }): TextDocumentEdit => ({
    textDocument: { uri, version: uri === note.uri ? note.version : (server.notes.note(uri)?.version ?? null) },
    edits: edits.map((edit) => (signed && can.confirmEdits ? { ...edit, annotationId: SIGNED } : edit)),
  }));
  if (!can.confirmEdits || !changes.some(({ signed }) => signed)) return { documentChanges };
  return {
    documentChanges,
    changeAnnotations: {
      [SIGNED]: {
        label: 'Change of a signed note',
        needsConfirmation: true,
        description: 'A signature or a seal covers the text as it was. A sealed note is amended, not edited.',
      },
    },
  };
}
