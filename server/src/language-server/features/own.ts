import { computedPage } from '../../note/editing/computed-page.ts';
import { newNoteSnippet } from '../../note/editing/new-note.ts';
import type { Picture as DrawnPicture } from '../../note/picture/frame.ts';
import { pathAt } from '../../note/editing/spots.ts';
import { NOTE_ENDING } from '../../note/set/set-layout.ts';
import { inFolder } from '../addresses.ts';
import type { Apart } from '../apart.ts';
import { freeName } from '../free-name.ts';
import type { Server } from '../handlers.ts';
import type { OpenNote } from '../note-book.ts';
import {
  askServer,
  type Drawing,
  type ExplainCheckParams,
  type NewNote,
  type NewNoteParams,
  type NoteParams,
  type Page,
  type Picture,
  type PictureParams,
} from '../own-requests.ts';
import { subjectOf } from '../picture-subject.ts';

/** The pages, the picture and the new note. */
export function ownRequests(server: Server): void {
  const { connection, guard, notes } = server;
  connection.onRequest(
    askServer.explainCheck,
    guard<ExplainCheckParams, Page | null>(askServer.explainCheck, null, async ({ check }) => {
      const markdown = await server.checkPage(check);
      return markdown === undefined ? null : { title: check, markdown };
    }),
  );
  connection.onRequest(
    askServer.computedValues,
    guard<NoteParams, Page | null>(askServer.computedValues, null, ({ uri }) => {
      const note = notes.note(uri);
      if (note === undefined) return null;
      return { title: 'What was computed, and from what', markdown: computedPage(note.computed) };
    }),
  );
  connection.onRequest(
    askServer.prose,
    guard<NoteParams, Page | null>(askServer.prose, null, async ({ uri }) => {
      const apart = await server.apart.load();
      const note = notes.note(uri);
      return (note && apart?.prose(note.reading, note.computed, note.set)) ?? null;
    }),
  );
  connection.onRequest(
    askServer.picture,
    guard<PictureParams, Picture | null>(askServer.picture, null, async ({ uri, line, character }) => {
      const apart = await server.apart.load();
      const note = notes.note(uri);
      if (note === undefined || apart === null) return null;
      return pictureOf(note, note.lines.offsetAt({ line, character }), apart);
    }),
  );
  connection.onRequest(
    askServer.newNote,
    guard<NewNoteParams, NewNote | null>(askServer.newNote, null, async ({ folder, today }) => {
      const { sets } = notes;
      if (sets === undefined) return null;
      const [set, isTaken] = await Promise.all([
        sets.ready(inFolder(folder, `new${NOTE_ENDING}`)),
        sets.takenIn(folder),
      ]);
      return {
        snippet: newNoteSnippet(set?.department ?? null, today),
        fileName: freeName(`operation-${today}`, isTaken),
      };
    }),
  );
}

function pictureOf(note: OpenNote, offset: number, { drawEye, drawAstigmatism, styles }: Apart): Picture | null {
  const subject = subjectOf(note);
  if (subject === undefined) return null;
  const emphasis = subject.own ? pathAt(note.reading.tree, note.reading.kind, offset) : undefined;
  const options = { emphasis, clickable: true, ownStyle: false };
  const drawings = [drawingOf('eye', drawEye(subject.scene, options), note, subject.own)];
  const { before, expected, achieved } = subject.vectors;
  if (before !== undefined || expected !== undefined || achieved !== undefined) {
    drawings.push(drawingOf('astigmatism', drawAstigmatism(subject.vectors, options), note, subject.own));
  }
  return { drawings, styles };
}

function drawingOf(kind: Drawing['kind'], drawn: DrawnPicture, note: OpenNote, own: boolean): Drawing {
  return {
    kind,
    title: drawn.title,
    svg: drawn.svg,
    marks: drawn.marks.map(({ id, from }) => ({
      id,
      // What is drawn from another note has no place in this one.
      at: own && from.span !== undefined ? note.lines.positionAt(from.span.start) : null,
    })),
  };
}
