import type { Dictation } from '../note/dictation/dictation.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import type { ApartLoader } from './apart-loader.ts';

/** What understands dictations, from when the first note needs it. */
export class DictationLoader {
  readonly #apart: ApartLoader;
  /** Null until it is there, and where it cannot be had. */
  ready: Dictation | null = null;

  constructor(apart: ApartLoader) {
    this.#apart = apart;
  }

  /** Whether something can only be said of a note once it is loaded. */
  isMissingFor(reading: NoteReading | undefined): boolean {
    return this.ready === null && reading?.kind === 'operation' && reading.note.dictation !== undefined;
  }

  async load(): Promise<Dictation | null> {
    this.ready = (await this.#apart.load())?.dictation ?? null;
    return this.ready;
  }
}
