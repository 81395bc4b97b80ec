import { isSameThing, mentionsIn, type Mention } from '../note/editing/mentions.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { decoded } from './addresses.ts';
import type { Server } from './handlers.ts';
import type { LiveSet } from './live-set.ts';
import type { OpenNote } from './note-book.ts';

/** One text of a set. */
export interface SetText {
  readonly uri: string;
  readonly reading: NoteReading;
}

/** A mention, and the text it stands in. */
export interface Place extends SetText {
  readonly mention: Mention;
}

/** Every mention of one thing in the set of a note, the note itself included; the set is waited for. */
export async function mentionsInSet(
  server: Server,
  note: OpenNote,
  thing: Pick<Mention, 'thing' | 'name'>,
): Promise<readonly Place[]> {
  const set = (await server.notes.sets?.ready(note.uri)) ?? null;
  return placesOf(thing, textsNaming(server, note, set, thing.name));
}

/** Every mention of one thing in some texts. */
export function placesOf(thing: Pick<Mention, 'thing' | 'name'>, texts: readonly SetText[]): readonly Place[] {
  return texts.flatMap(({ uri, reading }) =>
    mentionsIn(reading)
      .filter((mention) => isSameThing(mention, thing))
      .map((mention) => ({ uri, reading, mention })),
  );
}

/** The texts of a set that hold a name: the note itself, the others, the department file. Without a set the note alone. */
export function textsNaming({ notes }: Server, note: OpenNote, set: LiveSet | null, name: string): readonly SetText[] {
  const uri = set?.departmentUri;
  const department = uri === undefined ? undefined : (notes.reading(uri) ?? set?.departmentReading);
  const texts = [
    ...(set?.notesWith(name) ?? []),
    ...(uri === undefined || department === undefined ? [] : [{ uri, reading: department }]),
  ];
  // A note may not have been told to its set yet.
  return texts.some((text) => decoded(text.uri) === decoded(note.uri)) ? texts : [note, ...texts];
}
