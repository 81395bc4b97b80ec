import type { Dictation } from '../note/dictation/dictation.ts';
import type { Later } from './latest-wins.ts';

/** What the server needs from where it runs; a process and a web worker differ in nothing else. */
export interface Runtime {
  readonly later: Later;
  /** How often the first note is gone through while nobody asks for anything; see practice.ts. */
  readonly practice?: number;
  /** Undefined where there is no disk: then the editor is asked, if it can answer. */
  readonly files?: SetFiles | undefined;
  /**
   * The text of check-pages.json: the page of every check as Markdown, by its id. The pages stand beside the server and
   * are read when first asked for. Undefined where there is no disk: then the editor is asked, if it can answer.
   */
  readonly checkPages?: (() => Promise<string>) | undefined;
  /**
   * Loads what understands dictations, which stands beside the server as a program of its own. `address` is where the
   * editor has it, for a runtime that has no folder of its own.
   */
  readonly dictation?: ((address: string | null) => Promise<Dictation | null>) | undefined;
  /** Year-month-day, where the surgeon is. */
  readonly today: () => string;
}

/** Reads the folder of a set. Addresses are URIs. */
export interface SetFiles {
  /** The notes and department files in a folder, with `deep` also those in all folders below it. */
  list(folder: string, deep: boolean): Promise<readonly string[]>;
  /** The text as stored, or null: no such file, or it cannot be read. */
  read(uri: string): Promise<string | null>;
}

/** A date as the note writes it, in the time zone of the machine. */
export function dateText(date: Date): string {
  const parts = [date.getFullYear(), date.getMonth() + 1, date.getDate()];
  return parts.map((part) => String(part).padStart(2, '0')).join('-');
}
