import {
  ResponseError,
  ErrorCodes,
  type ChangeAnnotation,
  type PrepareRenameParams,
  type Range,
  type RenameParams,
  type TextDocumentEdit,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import { mentionAt, type Mention } from '../../note/editing/mentions.ts';
import { renameIn, whyNotName } from '../../note/editing/rename.ts';
import { nameOf } from '../addresses.ts';
import { forNote, type Server } from '../handlers.ts';
import { lineIndex } from '../line-index.ts';
import type { OpenNote } from '../note-book.ts';
import { placesOf, textsNaming, type Place } from '../set-mentions.ts';

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
  connection.onRenameRequest(
    forNote<RenameParams, WorkspaceEdit | ResponseError | null>(
      server,
      'textDocument/rename',
      null,
      (note, { position, newName }) => {
        const mention = mentionAt(note.reading, note.lines.offsetAt(position));
        return mention === undefined ? null : rename(mention, newName, note, server);
      },
    ),
  );
}

async function rename(mention: Mention, newName: string, note: OpenNote, server: Server) {
  const why = whyNotName(newName);
  if (why !== undefined) return refused(why);
  // A closed note may have been written to by something that nobody told us of.
  const set = await server.notes.sets?.fresh(note.uri).catch(() => undefined);
  if (set === undefined) return refused('The other notes of the set cannot be read just now; nothing was renamed.');
  const [taken] =
    newName === mention.name
      ? []
      : placesOf({ thing: mention.thing, name: newName }, textsNaming(server, note, set, newName));
  const unclear = taken && whyUnclear(mention, newName, taken);
  if (unclear !== undefined && (isPerson(mention) || !server.can().confirmEdits)) return refused(unclear);
  const changes = textsNaming(server, note, set, mention.name).flatMap(({ uri, reading }): Change[] => {
    const lines = lineIndex(reading.text);
    const edits = renameIn(reading, mention, newName).map(({ span, text }) => ({
      range: lines.rangeOf(span),
      newText: text,
    }));
    const signed = reading.kind !== 'department' && (reading.note?.signed?.items.length ?? 0) > 0;
    return edits.length === 0 ? [] : [{ uri, edits, signed }];
  });
  return editOf(changes, unclear, server);
}

function refused(why: string): ResponseError {
  return new ResponseError(ErrorCodes.InvalidParams, why);
}

/** Notes of two operations or two patients that have become one cannot be told apart again. */
function isPerson({ thing }: Mention): boolean {
  return thing === 'note' || thing === 'patient';
}

const NAMED = {
  note: 'the id of a note',
  patient: 'the reference of a patient',
  staff: 'the name of a member of staff',
  lens: 'the name of a lens model',
} as const;

/** What would happen if a thing got a name that is in use. */
function whyUnclear({ thing, name }: Mention, newName: string, { uri }: Place): string {
  const two = `“${newName}” is ${NAMED[thing]} already, in ${nameOf(uri)}: it and “${name}” could not be told apart any more.`;
  return thing === 'patient'
    ? `${two} Nothing was renamed. If a note names the wrong patient, put it right in that note alone.`
    : `${two} Choose a name that is not in use.`;
}

interface Change {
  readonly uri: string;
  readonly edits: readonly TextEdit[];
  readonly signed: boolean;
}

const SIGNED = 'signed';
const UNCLEAR = 'unclear';

function editOf(changes: readonly Change[], unclear: string | undefined, { can, notes }: Server): WorkspaceEdit {
  const { confirmEdits, versionedEdits } = can();
  if (!versionedEdits) return { changes: Object.fromEntries(changes.map(({ uri, edits }) => [uri, [...edits]])) };
  const changeAnnotations: Record<string, ChangeAnnotation> = {};
  const documentChanges = changes.map(({ uri, edits, signed }): TextDocumentEdit => {
    const open = notes.note(uri);
    const textDocument = { uri: open?.uri ?? uri, version: open?.version ?? null };
    const annotationId = signed ? SIGNED : unclear === undefined ? undefined : UNCLEAR;
    if (!confirmEdits || annotationId === undefined) return { textDocument, edits: [...edits] };
    changeAnnotations[annotationId] = annotationId === SIGNED ? OF_SIGNED : inUse(unclear);
    return { textDocument, edits: edits.map((edit) => ({ ...edit, annotationId })) };
  });
  return Object.keys(changeAnnotations).length === 0 ? { documentChanges } : { documentChanges, changeAnnotations };
}

const OF_SIGNED: ChangeAnnotation = {
  label: 'Change of a signed note',
  needsConfirmation: true,
  description: 'A signature or a seal covers the text as it was. A sealed note is amended, not edited.',
};

function inUse(description: string | undefined): ChangeAnnotation {
  return { label: 'The name is in use', needsConfirmation: true, ...(description !== undefined && { description }) };
}
