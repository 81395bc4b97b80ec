import type { Apart } from './apart.ts';
import type { Later } from './latest-wins.ts';
import type { FolderEntry, StoredFile } from './own-requests.ts';

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
   * Loads what stands apart beside the server, as a program of its own. `address` is where the editor has it, for a
   * runtime that has no folder of its own.
   */
  readonly apart?: ((address: string | null) => Promise<Apart | null>) | undefined;
  /** Year-month-day, where the surgeon is. */
  readonly today: () => string;
}

/** Reads the folders of sets. Addresses are URIs. Both reject when the files cannot be reached at the moment. */
export interface SetFiles {
  /** What stands directly in a folder; nothing where there is no such folder, or it may not be looked into. */
  list(folder: string): Promise<readonly FolderEntry[]>;
  /** null: no such file, or it may not be opened. */
  read(uri: string): Promise<StoredFile | null>;
  /** Whether the folders above the one that is open in the editor can be read too. */
  reachesAbove(uri: string): boolean;
}

/** A date as the note writes it, in the time zone of the machine. */
export function dateText(date: Date): string {
  const parts = [date.getFullYear(), date.getMonth() + 1, date.getDate()];
  return parts.map((part) => String(part).padStart(2, '0')).join('-');
}
