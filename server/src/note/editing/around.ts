import type { Surroundings } from '../review.ts';
import type { NoteReading } from '../reading/note-reading.ts';

/** The note being written and what stands around it: all that editing may know. */
export interface Around {
  readonly reading: NoteReading;
  readonly surroundings: Surroundings;
}
