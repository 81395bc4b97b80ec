import { join } from 'node:path';
import type { ReportedNote } from '../../note/reports/report-input.ts';
import type { Files } from '../world.ts';
import type { Opened } from './checker.ts';
import { readKept, writeKept, type KeptFile } from './kept-file.ts';
import type { ResultKey } from './result-keys.ts';

/** The folder of the cache, in the folder where the command runs. */
export const CACHE_FOLDER = '.sideport-cache';
const CACHE_FILE = 'check.ndjson';
/** What was not used in a run is kept for the next one up to this many times what was used. */
const SPARE = 4;

export interface CachedResult {
  readonly note: ReportedNote;
  readonly opened: readonly Opened[];
}

/**
 * What earlier runs found out, by content: a result counts only while the program, the note, its department file, the
 * facts of its set, the day and every note that was opened for it are the same. A file that is not as it was written
 * counts for nothing: all is done again.
 */
export class CheckCache {
  readonly #files: Files;
  readonly #file: KeptFile;
  readonly #program: string;
  readonly #old = new Map<string, string>();
  readonly #used = new Map<string, string>();
  #changed = false;

  constructor(files: Files, folder: string, program: string) {
    this.#files = files;
    this.#file = { path: join(folder, CACHE_FOLDER, CACHE_FILE), header: 'sideport check cache, form 3' };
    this.#program = program;
    this.#load();
  }

  /** The facts of a text without the name of its file, as they are written. */
  facts(textHash: string): string | undefined {
    return this.#take(`facts ${textHash}`);
  }

  keepFacts(textHash: string, written: string): void {
    this.#put(`facts ${textHash}`, written);
  }

  result(key: ResultKey): CachedResult | undefined {
    const written = this.#take(nameOf(key));
    return written === undefined ? undefined : (JSON.parse(written) as CachedResult);
  }

  keepResult(key: ResultKey, value: CachedResult): void {
    this.#put(nameOf(key), JSON.stringify(value));
  }

  /** Writes what this run used and made. */
  save(): void {
    if (!this.#changed) return;
    const spare = [...this.#old].filter(([key]) => !this.#used.has(key)).slice(0, SPARE * this.#used.size);
    const lines = [...this.#used, ...spare].map(([key, written]) => `${key}\t${written}\n`).join('');
    writeKept(this.#files, this.#file, this.#program, lines);
  }

  #load(): void {
    const lines = readKept(this.#files, this.#file, this.#program) ?? '';
    for (let start = 0; start < lines.length;) {
      const tab = lines.indexOf('\t', start);
      const end = lines.indexOf('\n', tab);
      this.#old.set(lines.slice(start, tab), lines.slice(tab + 1, end));
      start = end + 1;
    }
  }

  #take(key: string): string | undefined {
    const written = this.#used.get(key) ?? this.#old.get(key);
    if (written !== undefined) this.#used.set(key, written);
    return written;
  }

  #put(key: string, written: string): void {
    this.#used.set(key, written);
    this.#changed = true;
  }
}

/** One word a line begins with; the file name may hold anything, so it is written as JSON does. */
function nameOf({ text, file, around }: ResultKey): string {
  return `result ${text} ${around} ${JSON.stringify(file)}`;
}
