import type { Connection } from 'vscode-languageserver';
import type { Dictation } from '../note/dictation/dictation.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { askEditor } from './own-requests.ts';
import type { Runtime } from './runtime.ts';

/** Loads what understands dictations, once, when the first note needs it. */
export class DictationLoader {
  readonly #load: () => Promise<Dictation | null>;
  #loading: Promise<Dictation | null> | undefined;
  /** Null until it is there, and where it cannot be had. */
  ready: Dictation | null = null;

  constructor(connection: Connection, runtime: Runtime, editorReads: () => boolean) {
    this.#load = async () => {
      if (runtime.dictation === undefined) return null;
      const address: unknown = editorReads() ? await connection.sendRequest(askEditor.dictationAddress, {}) : null;
      return runtime.dictation(typeof address === 'string' ? address : null);
    };
  }

  /** Whether something can only be said of a note once it is loaded. */
  isMissingFor(reading: NoteReading | undefined): boolean {
    return this.ready === null && reading?.kind === 'operation' && reading.note.dictation !== undefined;
  }

  async load(): Promise<Dictation | null> {
    this.#loading ??= this.#load().catch(() => null);
    this.ready = await this.#loading;
    return this.ready;
  }
}
