import type { AskGit } from './checking/changed.ts';
import type { Checker, CheckerOptions } from './checking/checker.ts';

/** Everything a command may touch outside itself; tests hand in their own. */
export interface World {
  /** All of standard input as text. Rejects with a FileProblem where it is not UTF-8. */
  readonly stdin: () => Promise<string>;
  readonly stdout: Sink;
  readonly stderr: Sink;
  readonly files: Files;
  /** The folder the command was started in, absolute. */
  readonly folder: string;
  readonly now: () => Date;
  /** Threads that check notes, and how many of them the machine bears; without them all is done in one. */
  readonly workers?: { readonly most: number; start(options: CheckerOptions): Checker };
  /** Names the running program, so that what another build found out is not taken for its own; without it no cache. */
  readonly program?: () => string;
  /** Asks the engine to collect garbage before it takes more memory. */
  readonly spareMemory?: () => void;
  readonly git?: AskGit;
}

export interface Sink {
  write(data: string | Uint8Array): void;
  /** Whether colour may be used: a terminal, and nobody asked for none. */
  readonly colour: boolean;
}

/** Files by absolute path. What goes wrong is thrown as a FileProblem. */
export interface Files {
  /** The text as stored, a byte order mark included; what is not UTF-8 is a FileProblem. */
  read(file: string): string;
  /** The bytes as stored. */
  bytes(file: string): Uint8Array;
  /** Writes all of it or nothing; folders above it are made. */
  write(file: string, data: string | Uint8Array): void;
  /** Begins a file that is written piece by piece; folders above it are made. */
  create(file: string): FileWriter;
  /** null where nothing stands. */
  kind(path: string): 'file' | 'folder' | null;
  /** What stands directly in a folder; links are left out, so that no walk goes in circles. */
  list(folder: string): readonly FolderEntry[];
}

/** A file being written. */
export interface FileWriter {
  write(data: string | Uint8Array): void;
  close(): void;
}

export interface FolderEntry {
  readonly name: string;
  readonly kind: 'file' | 'folder';
}

/** A file or folder could not be used; the message says why, without the path. */
export class FileProblem extends Error {}

/** The command was not used as it can be; the message says what would be right. */
export class WrongUse extends Error {}

/** 0: nothing at or above the fail level. 1: remarks at or above it. 2: wrong use, no input, or something could not be read. */
export type ExitCode = 0 | 1 | 2;

/** The day it is where the command runs, year-month-day. */
export function today(now: Date): string {
  const parts = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return parts.map((part) => String(part).padStart(2, '0')).join('-');
}
