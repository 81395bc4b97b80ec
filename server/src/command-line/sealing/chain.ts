import { resolve } from 'node:path';
import type { NoteReading } from '../../note/reading/note-reading.ts';
import type { Envelope } from '../../note/seal/envelope.ts';
import { amendmentFacts } from '../../note/set/amendments-of.ts';
import { notesWithId, type NoteSet } from '../../note/set/note-set.ts';
import type { World } from '../world.ts';
import { readSeals } from './seal-files.ts';

/** One note of a chain, with its bytes and seals. */
export interface Link {
  readonly file: string;
  readonly reading: NoteReading;
  readonly bytes: Uint8Array;
  readonly seals: readonly Envelope[];
}

/** The id that a chain is built on: what an amendment amends, and every other note's own. */
export function rootId(reading: NoteReading): string | undefined {
  if (reading.kind === 'amendment') return reading.note.amends?.value;
  return reading.kind === null || reading.kind === 'department' ? undefined : reading.note.id?.value;
}

/** A note and its amendments in the order of writing. Throws FileProblem for a damaged file of seals. */
export function chainOf(id: string, set: NoteSet, world: World): readonly Link[] {
  const root = notesWithId(set, id).find(({ record }) => record !== 'amendment');
  return [...(root ? [root] : []), ...amendmentFacts(set, id)].flatMap(({ file }) => {
    const reading = set.open(file);
    if (reading === undefined) return [];
    const path = resolve(world.folder, file);
    return [{ file, reading, bytes: world.files.bytes(path), seals: readSeals(path, world.files) }];
  });
}
