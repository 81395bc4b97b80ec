import type { Later } from './latest-wins.ts';

/** What the server needs from where it runs; a process and a web worker differ in nothing else. */
export interface Runtime {
  readonly later: Later;
  /** Undefined where there is no disk: then the editor is asked, if it can answer. */
  readonly files?: SetFiles | undefined;
}

/** Reads the folder of a set. Addresses are URIs. */
export interface SetFiles {
  /** Every note and department file at or below a folder. */
  list(folder: string): Promise<readonly string[]>;
  /** The text as stored, or null: no such file, or it cannot be read. */
  read(uri: string): Promise<string | null>;
}
