import type { Connection, TextDocumentIdentifier } from 'vscode-languageserver';
import type { ClientCan } from './client-can.ts';
import type { ApartLoader } from './apart-loader.ts';
import type { DictationLoader } from './dictation-loader.ts';
import type { Guard } from './guard.ts';
import type { NoteBook, OpenNote } from './note-book.ts';
import type { Settings } from './settings.ts';

/** All that a feature needs to answer its requests. */
export interface Server {
  readonly connection: Connection;
  readonly guard: Guard;
  readonly notes: NoteBook;
  readonly settings: Settings;
  readonly apart: ApartLoader;
  readonly dictation: DictationLoader;
  readonly today: () => string;
  /** The page of a check as Markdown; undefined when there is no such check, or the pages cannot be had. */
  readonly checkPage: (check: string) => Promise<string | undefined>;
  /** Known once the editor has introduced itself, before any request. */
  readonly can: () => ClientCan;
}

/** A handler about one open note; its fallback where the note is not open. */
export function forNote<Params extends { readonly textDocument: TextDocumentIdentifier }, Answer>(
  { guard, notes }: Server,
  name: string,
  fallback: Answer,
  handler: (note: OpenNote, params: Params) => Answer | Promise<Answer>,
) {
  return guard<Params, Answer>(name, fallback, (params) => {
    const note = notes.note(params.textDocument.uri);
    return note === undefined ? fallback : handler(note, params);
  });
}
