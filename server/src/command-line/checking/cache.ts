import { join } from 'node:path';
import type { ReportedNote } from '../../note/reports/report-input.ts';
import type { NoteFacts } from '../../note/set/note-set.ts';
import { FileProblem, type Files } from '../world.ts';
import type { Opened } from './checker.ts';
import type { ResultKey } from './result-keys.ts';

/** The folder of the cache, in the folder where the command runs. */
export const CACHE_FOLDER = '.sideport-cache';
const CACHE_FILE = 'check.ndjson';
const HEADER = 'sideport check cache, form 2';
/** What was not used in a run is kept for the next one up to this many times what was used. */
const SPARE = 4;

export interface CachedResult {
  readonly note: ReportedNote;
  readonly opened: readonly Opened[];
}

type Line =
  | { readonly facts: true; readonly value: Omit<NoteFacts, 'file'> | null }
  | { readonly result: true; readonly value: CachedResult };

function parsed(line: string): Line | undefined {
  try {
    const value: unknown = JSON.parse(line);
    return typeof value === 'object' && value !== null && 'value' in value ? (value as Line) : undefined;
  } catch {
    return undefined;
  }
}

/**
 * What earlier runs found out, by content: a result counts only while the program, the note, its department file, the
 * facts of its set, the day and every note that was opened for it are the same. What cannot be read is done again.
 */
export class CheckCache {
  readonly #files: Files;
  readonly #path: string;
  readonly #program: string;
  readonly #old = new Map<string, string>();
  readonly #used = new Map<string, string>();
  #changed = false;

  constructor(files: Files, folder: string, program: string) {
    this.#files = files;
    this.#path = join(folder, CACHE_FOLDER, CACHE_FILE);
    this.#program = program;
    this.#load();
  }

  facts(textHash: string, file: string): NoteFacts | null | undefined {
    const line = this.#take(`facts ${textHash}`);
    if (line === undefined || !('facts' in line)) return undefined;
    return line.value === null ? null : { ...line.value, file };
  }

  keepFacts(textHash: string, facts: NoteFacts | null): void {
    const { file: _file, ...value } = facts ?? { file: '' };
    this.#put(`facts ${textHash}`, { facts: true, value: facts === null ? null : value } as Line);
  }

  result(key: ResultKey): CachedResult | undefined {
    const line = this.#take(nameOf(key));
    return line !== undefined && 'result' in line ? line.value : undefined;
  }

  keepResult(key: ResultKey, value: CachedResult): void {
    this.#put(nameOf(key), { result: true, value });
  }

  /** Writes what this run used and made. A folder that may not be written to is no fault: the next run does it again. */
  save(): void {
    if (!this.#changed) return;
    const spare = [...this.#old].filter(([key]) => !this.#used.has(key)).slice(0, SPARE * this.#used.size);
    const lines = [...this.#used, ...spare].map(([key, line]) => `${key}\t${line}`);
    try {
      // Whatever keeps the notes under version control must not take the cache in.
      this.#files.write(join(this.#path, '..', '.gitignore'), '*\n');
      this.#files.write(this.#path, `${[HEADER, this.#program, ...lines].join('\n')}\n`);
    } catch (error) {
      if (!(error instanceof FileProblem)) throw error;
    }
  }

  #load(): void {
    if (this.#files.kind(this.#path) !== 'file') return;
    try {
      const [header, program, ...lines] = this.#files.read(this.#path).split('\n');
      if (header !== HEADER || program !== this.#program) return;
      for (const line of lines) {
        const tab = line.indexOf('\t');
        if (tab > 0) this.#old.set(line.slice(0, tab), line.slice(tab + 1));
      }
    } catch (error) {
      if (!(error instanceof FileProblem)) throw error;
    }
  }

  #take(key: string): Line | undefined {
    const text = this.#used.get(key) ?? this.#old.get(key);
    const line = text === undefined ? undefined : parsed(text);
    if (text !== undefined && line !== undefined) this.#used.set(key, text);
    return line;
  }

  #put(key: string, line: Line): void {
    this.#used.set(key, JSON.stringify(line));
    this.#changed = true;
  }
}

/** One word a line begins with; the file name may hold anything, so it is written as JSON does. */
function nameOf({ text, file, around }: ResultKey): string {
  return `result ${text} ${around} ${JSON.stringify(file)}`;
}
