import { detached } from '../../note/detached.ts';
import { emptyFile } from '../../note/reading/empty-file.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { remarksOf } from '../../note/review.ts';
import type { ReportedNote } from '../../note/reports/report-input.ts';
import { factsIn, type NoteFacts, type NoteSet } from '../../note/set/note-set.ts';
import { isDepartmentName, shownAs } from '../file-names.ts';
import type { Input } from '../find-notes.ts';
import { reportOf } from '../note-report.ts';
import { dictationFor } from '../dictation-for.ts';
import { NoteSets } from '../note-sets.ts';
import { readInput } from '../read-input.ts';
import { FileProblem, type World } from '../world.ts';

/** The facts of a file on disk; null where it is no note or cannot be read. */
export interface FileFacts {
  readonly path: string;
  readonly facts: NoteFacts | null;
  /** Hash of the text they were read from; null when there was none. */
  readonly hash: string | null;
}

/** A note that was opened in full while another was checked, and the hash of its text; '' when it had none. */
export type Opened = readonly [file: string, hash: string];

/** What stands for a hash where nothing is compared. */
export const noHash = (): string => '';

/** What came of one input. */
export type Checked =
  | { readonly note: ReportedNote; readonly hash: string; readonly opened: readonly Opened[] }
  | { readonly problem: string };

/** Checks notes in batches, in this thread or another. Facts of a set are made once and handed to all checkers. */
export interface Checker {
  /** How many tasks it is given at a time, so that it need not wait for the next. */
  readonly ahead: number;
  facts(paths: readonly string[]): Promise<readonly FileFacts[]>;
  /** From now on the sets are known to have these facts. */
  know(facts: readonly FileFacts[]): Promise<void>;
  check(inputs: readonly Input[]): Promise<readonly Checked[]>;
  close(): Promise<void>;
}

export interface CheckerOptions {
  readonly folder: string;
  readonly department?: string;
  /** Whether contents will be compared, so that hashes are wanted. */
  readonly compares: boolean;
  /** When the run began, milliseconds since 1970. */
  readonly now: number;
}

const NONE: readonly never[] = [];

/** A report that can be kept by the thousand: most notes have no remarks, and share the list that says so. */
function kept(note: ReportedNote): ReportedNote {
  const { file, id, remarks } = note;
  return remarks.length === 0 ? { file, id: detached(id), remarks: NONE } : detached(note);
}

/** A checker in this thread. */
export class LocalChecker implements Checker {
  readonly ahead = 1;
  readonly #world: World;
  readonly #known = new Map<string, NoteFacts | null>();
  readonly #sets: NoteSets;
  readonly #hash: (text: string) => string;

  /** Without a cache no contents are compared, and `hash` may answer anything. */
  constructor(world: World, department: string | undefined, hash: (text: string) => string) {
    this.#world = world;
    this.#hash = hash;
    this.#sets = new NoteSets(world, department, (path) => this.#known.get(path));
  }

  facts(paths: readonly string[]): Promise<readonly FileFacts[]> {
    return Promise.resolve(paths.map((path) => this.#factsAt(path)));
  }

  know(facts: readonly FileFacts[]): Promise<void> {
    for (const { path, facts: known } of facts) this.#known.set(path, known);
    return Promise.resolve();
  }

  async check(inputs: readonly Input[]): Promise<readonly Checked[]> {
    const checked: Checked[] = [];
    for (const input of inputs) checked.push(await this.#checkOne(input));
    return checked;
  }

  close(): Promise<void> {
    return Promise.resolve();
  }

  #factsAt(path: string): FileFacts {
    try {
      const text = this.#world.files.read(path);
      const facts = factsIn(text, shownAs(path, this.#world.folder)) ?? null;
      return { path, facts, hash: this.#hash(text) };
    } catch (error) {
      if (error instanceof FileProblem) return { path, facts: null, hash: null };
      throw error;
    }
  }

  async #checkOne(input: Input): Promise<Checked> {
    try {
      const text = await readInput(input, this.#world);
      const hash = this.#hash(text);
      if (input.path !== null && isDepartmentName(input.path)) {
        const reading = readNote(text, 'department');
        const remarks = remarksOf(reading, { file: input.file });
        return { note: kept(reportOf(input.file, reading, remarks, null)), hash, opened: NONE };
      }
      if (text === '') return { note: reportOf(input.file, readNote(text), [emptyFile()], null), hash, opened: NONE };
      const reading = readNote(text);
      const surroundings = this.#sets.around(input, reading);
      const opened = new Map<string, string>();
      const set = watched(surroundings.set, opened, this.#hash);
      const remarks = remarksOf(reading, { ...surroundings, set, dictation: await dictationFor(reading) });
      return {
        note: kept(reportOf(input.file, reading, remarks, set)),
        hash,
        opened: opened.size === 0 ? NONE : [...opened],
      };
    } catch (error) {
      if (error instanceof FileProblem) return { problem: error.message };
      throw error;
    }
  }
}

/** The same set, with a record of the notes that were opened in full. */
function watched(set: NoteSet, opened: Map<string, string>, hash: (text: string) => string): NoteSet {
  return {
    get facts() {
      return set.facts;
    },
    open: (file) => {
      const reading = set.open(file);
      if (hash !== noHash && !opened.has(file)) opened.set(file, reading === undefined ? '' : hash(reading.text));
      return reading;
    },
    holding: (words) => set.holding?.(words),
  };
}
