import type { Dictation } from '../note/dictation/dictation.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';

/** The phrase table and its engine, for a note that holds a dictation; null for others, which need not wait for it. */
export async function dictationFor(reading: NoteReading): Promise<Dictation | null> {
  if (reading.kind !== 'operation' || reading.note.dictation === undefined) return null;
  return (await import('../note/dictation/dictation.ts')).newDictation();
}
