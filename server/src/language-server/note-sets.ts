import type { NoteReading } from '../note/reading/note-reading.ts';
import { DEPARTMENT_FILE } from '../note/set/set-layout.ts';
import { decoded, folderOf, hasPlace, inFolder, isDepartment, isWithin, nameOf } from './addresses.ts';
import { faultLine, type FaultLog } from './guard.ts';
import { departmentIn, LiveSet, type SetRoot } from './live-set.ts';
import type { SetFiles } from './runtime.ts';

/** What the sets need to know of the documents that are open: those count, not what is stored. */
export interface OpenReadings {
  reading(uri: string): NoteReading | undefined;
  /** The addresses of all of them. */
  uris(): readonly string[];
}

interface SetsOptions {
  readonly files: SetFiles;
  readonly open: OpenReadings;
  /** The folders that are open in the editor. */
  readonly folders: readonly string[];
  readonly log: FaultLog;
  /** Called when open notes may have to be checked again: a set was found, or is known anew. */
  readonly changed: () => void;
}

/** The search for the set of the notes in one folder. */
interface Search {
  /** Null until it is found and read. */
  set: LiveSet | null;
  readonly found: Promise<LiveSet>;
}

/** The sets of the notes that were opened, each found and read once, in the background. */
export class NoteSets {
  readonly #options: SetsOptions;
  /** By folder of a note. */
  readonly #searches = new Map<string, Search>();
  /** By their own folder. */
  readonly #sets = new Map<string, LiveSet>();
  /** Grows when notes may belong to other sets than before: what was being found then is found again. */
  #generation = 0;

  constructor(options: SetsOptions) {
    this.#options = options;
  }

  all(): readonly LiveSet[] {
    return [...this.#sets.values()];
  }

  /** The set of a note as far as it is known now; finding and reading it begins with the first call. */
  of(uri: string): LiveSet | null {
    return this.#searchFor(uri)?.set ?? null;
  }

  /** Waits until the set of a note has been read. Rejects when its files cannot be reached. */
  async ready(uri: string): Promise<LiveSet | null> {
    return (await this.#searchFor(uri)?.found) ?? null;
  }

  /** The set of a note with everything in it read at this moment. Rejects when its files cannot be reached. */
  async fresh(uri: string): Promise<LiveSet | null> {
    const set = await this.ready(uri);
    if (set === null) return null;
    const before = set.revision;
    const [, stays] = await Promise.all([set.readAgain(), set.readDepartmentAgain()]);
    if (!stays) {
      this.#beginAnew();
      return this.ready(uri);
    }
    if (set.revision !== before) this.#options.changed();
    return set;
  }

  /** Whether a name is taken in a folder, by anything stored or open, whatever it is and however it is capitalised. */
  async takenIn(folder: string): Promise<(name: string) => boolean> {
    const { files, open } = this.#options;
    const stored = (await files.list(folder)).map(({ name }) => name);
    const written = open.uris().filter((uri) => decoded(folderOf(uri) ?? '') === decoded(folder));
    const taken = new Set([...stored, ...written.map(nameOf)].map((name) => name.toLowerCase()));
    return (name) => taken.has(name.toLowerCase());
  }

  /** Files changed outside the editor, or are no longer open in it. */
  async filesChanged(uris: readonly string[]): Promise<void> {
    const before = this.#revisions();
    const stay = await Promise.all(uris.filter(isDepartment).map((uri) => this.#departmentStays(uri)));
    if (stay.includes(false)) {
      this.#beginAnew();
      return;
    }
    for (const set of this.#sets.values()) {
      const inSet = uris.filter((uri) => !isDepartment(uri) && set.holds(uri));
      if (inSet.length > 0) await set.readAgain(inSet);
    }
    if (this.#revisions() !== before) this.#options.changed();
  }

  #revisions(): string {
    return this.all()
      .map(({ revision }) => revision)
      .join();
  }

  /** A document was stored as it is written. */
  saved(uri: string, text: string): void {
    if (isDepartment(uri)) {
      // Where one is known already, what is written counts before it is stored.
      if (this.#setWithDepartment(uri) === undefined) this.#beginAnew();
      return;
    }
    for (const set of this.#sets.values()) if (set.holds(uri)) set.saved(uri, text);
  }

  /** Reads a department file again. False when notes may belong to other sets now: it is new, or gone. */
  async #departmentStays(uri: string): Promise<boolean> {
    return (await this.#setWithDepartment(uri)?.readDepartmentAgain()) ?? false;
  }

  #setWithDepartment(uri: string): LiveSet | undefined {
    const set = this.#sets.get(decoded(folderOf(uri) ?? uri));
    return set?.hasDepartment === true ? set : undefined;
  }

  #beginAnew(): void {
    this.#generation += 1;
    this.#searches.clear();
    this.#sets.clear();
    this.#options.changed();
  }

  #searchFor(uri: string): Search | undefined {
    if (!hasPlace(uri)) return undefined;
    const folder = folderOf(uri) ?? uri;
    const key = decoded(folder);
    const known = this.#searches.get(key);
    if (known !== undefined) return known;
    const search: Search = { set: null, found: this.#find(folder) };
    this.#searches.set(key, search);
    search.found.then(
      (set) => {
        search.set = set;
        this.#options.changed();
      },
      (fault: unknown) => {
        this.#options.log(faultLine('finding the set of a note', fault));
        // The next question about a note in the folder tries again.
        if (this.#searches.get(key) === search) this.#searches.delete(key);
      },
    );
    return search;
  }

  async #find(folder: string): Promise<LiveSet> {
    for (;;) {
      const generation = this.#generation;
      const root = await this.#rootOf(folder);
      if (generation !== this.#generation) continue;
      const key = decoded(root.folder);
      const set = this.#sets.get(key) ?? new LiveSet(root, this.#options.files, this.#options.open);
      this.#sets.set(key, set);
      await set.read();
      if (generation === this.#generation) return set;
    }
  }

  /** The nearest folder at or above with a department file; without any, the folder itself. */
  async #rootOf(folder: string): Promise<SetRoot> {
    const { files, folders, open } = this.#options;
    // Where only the editor reaches the files, as in a browser, nothing above the folder that is open in it can be
    // read; there that folder is the limit. Everywhere else the way up is that of the command line.
    const top = files.reachesAbove(folder)
      ? undefined
      : folders.find((each) => decoded(each) === decoded(folder) || isWithin(folder, each));
    for (let at: string | undefined = folder; at !== undefined; at = folderOf(at)) {
      const uri = inFolder(at, DEPARTMENT_FILE);
      const written = open.reading(uri);
      if (written !== undefined) return { folder: at, hasDepartment: true, department: written };
      const stored = await files.read(uri);
      if (stored !== null) return { folder: at, hasDepartment: true, department: departmentIn(stored.text) };
      if (top !== undefined && decoded(at) === decoded(top)) break;
    }
    return { folder, hasDepartment: false };
  }
}
