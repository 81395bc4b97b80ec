import { isSameThing, mentionsIn, type Mention } from '../note/editing/mentions.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import type { Server } from './handlers.ts';
import type { OpenNote } from './note-book.ts';

/** A mention, and the text it stands in. */
export interface Place {
  readonly uri: string;
  readonly reading: NoteReading;
  readonly mention: Mention;
}

/** Every mention of one thing in the set of a note, the note itself included; the set is waited for. */
export async function mentionsInSet(
  server: Server,
  note: OpenNote,
  thing: Pick<Mention, 'thing' | 'name'>,
): Promise<readonly Place[]> {
  return (await textsNaming(server, note, thing.name)).flatMap(({ uri, reading }) =>
    mentionsIn(reading)
      .filter((mention) => isSameThing(mention, thing))
      .map((mention) => ({ uri, reading, mention })),
  );
}

/** The texts of a set that hold a name: its notes and its department file. */
export async function textsNaming(
  { notes }: Server,
  note: OpenNote,
  name: string,
): Promise<readonly { readonly uri: string; readonly reading: NoteReading }[]> {
  const set = await notes.sets?.ready(note.uri);
  if (set === null || set === undefined) return [note];
  const department = set.departmentUri;
  const list = department === undefined ? undefined : (notes.reading(department) ?? set.departmentReading);
  return [
    ...set.notesWith(name),
    ...(department === undefined || list === undefined ? [] : [{ uri: department, reading: list }]),
  ];
}
