import {
  DocumentHighlightKind,
  type DefinitionParams,
  type DocumentHighlight,
  type DocumentHighlightParams,
  type DocumentLink,
  type DocumentLinkParams,
  type Location,
  type ReferenceParams,
} from 'vscode-languageserver';
import { isSameThing, mentionAt, mentionsIn, type Mention } from '../../note/editing/mentions.ts';
import type { NoteReading } from '../../note/reading/note-reading.ts';
import { forNote, type Server } from '../handlers.ts';
import { lineIndex } from '../line-index.ts';
import type { OpenNote } from '../note-book.ts';
import { mentionsInSet, type Place } from '../set-mentions.ts';

/** From a name to what it names, and to every place that names it, throughout the set. */
export function navigation(server: Server): void {
  const { connection } = server;
  connection.onDefinition(
    forNote<DefinitionParams, Location[]>(server, 'textDocument/definition', [], async (note, { position }) => {
      const mention = mentionAt(note.reading, note.lines.offsetAt(position));
      if (mention === undefined) return [];
      const places = await mentionsInSet(server, note, mention);
      const defining = places.filter((place) => place.mention.defines);
      // From an operation's own id the way leads to what points to it.
      const others = places.filter((place) => !place.mention.defines);
      return (mention.defines ? others : defining).map(locationOf);
    }),
  );
  connection.onReferences(
    forNote<ReferenceParams, Location[]>(server, 'textDocument/references', [], async (note, { position, context }) => {
      const mention = mentionAt(note.reading, note.lines.offsetAt(position));
      if (mention === undefined) return [];
      const places = await mentionsInSet(server, note, mention);
      return places.filter((place) => context.includeDeclaration || !place.mention.defines).map(locationOf);
    }),
  );
  connection.onDocumentHighlight(
    forNote<DocumentHighlightParams, DocumentHighlight[]>(
      server,
      'textDocument/documentHighlight',
      [],
      (note, { position }) => {
        const mention = mentionAt(note.reading, note.lines.offsetAt(position));
        if (mention === undefined) return [];
        return mentionsIn(note.reading)
          .filter((each) => isSameThing(each, mention))
          .map(({ span }) => ({ range: note.lines.rangeOf(span), kind: DocumentHighlightKind.Text }));
      },
    ),
  );
  connection.onDocumentLinks(
    forNote<DocumentLinkParams, DocumentLink[]>(server, 'textDocument/documentLink', [], (note) =>
      mentionsIn(note.reading).flatMap((mention) => linkOf(mention, note, server)),
    ),
  );
}

function locationOf({ uri, reading, mention }: Place): Location {
  return { uri, range: lineIndex(reading.text).rangeOf(mention.span) };
}

function linkOf(mention: Mention, note: OpenNote, server: Server): DocumentLink[] {
  const target = mention.thing === 'note' ? otherNote(mention, note) : departmentEntry(mention, note, server);
  return target === undefined ? [] : [{ range: note.lines.rangeOf(mention.span), ...target }];
}

/** A follow-up leads to its operation; an operation to its follow-up where there is one. */
function otherNote(mention: Mention, { set }: OpenNote): { target: string; tooltip: string } | undefined {
  const facts = set?.facts.filter((each) => (mention.defines ? each.pointsTo : each.id) === mention.name) ?? [];
  const [only] = facts;
  const uri = only === undefined || facts.length > 1 ? undefined : set?.uriOf(only.file);
  return uri === undefined || only === undefined ? undefined : { target: uri, tooltip: `Open the ${only.record}` };
}

/** A lens model or a member of staff leads to its entry in the department file. */
function departmentEntry(
  mention: Mention,
  note: OpenNote,
  server: Server,
): { target: string; tooltip: string } | undefined {
  const uri = note.set?.departmentUri;
  if (mention.defines || uri === undefined || (mention.thing !== 'lens' && mention.thing !== 'staff')) return undefined;
  const reading: NoteReading | undefined = server.notes.reading(uri) ?? note.set?.departmentReading;
  const entry = reading && mentionsIn(reading).find((each) => each.defines && isSameThing(each, mention));
  if (reading === undefined || entry === undefined) return undefined;
  const { start } = lineIndex(reading.text).rangeOf(entry.span);
  return { target: `${uri}#${start.line + 1},${start.character + 1}`, tooltip: "Open the department's list" };
}
