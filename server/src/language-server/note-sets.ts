import type { NoteReading } from '../note/reading/note-reading.ts';
import { readNote } from '../note/reading/read-note.ts';
import { DEPARTMENT_FILE, folderOf, hasPlace, isDepartment, isWithin, decoded } from './addresses.ts';
import { LiveSet } from './live-set.ts';
import type { SetFiles } from './runtime.ts';

/** What the sets need to know of the documents that are open: those count, not what is stored. */
export interface OpenReadings {
  reading(uri: string): NoteReading | undefined;
}

/** The sets of the notes that were opened, each found and read once, in the background. */
export class NoteSets {
  readonly #files: SetFiles;
  readonly #open: OpenReadings;
  readonly #folders: readonly string[];
  /** Called when a set has been read, or read again. */
  readonly #changed: (set: LiveSet) => void;
  /** By folder of a note; null while it is being found. */
  readonly #found = new Map<string, LiveSet | null>();
  readonly #sets = new Map<string, LiveSet>();

  constructor(files: SetFiles, open: OpenReadings, folders: readonly string[], changed: (set: LiveSet) => void) {
    this.#files = files;
    this.#open = open;
    this.#folders = folders;
    this.#changed = changed;
  }

  all(): readonly LiveSet[] {
    return [...this.#sets.values()];
  }

  /** The set of a note as far as it is known now; finding and reading it begins with the first call. */
  of(uri: string): LiveSet | null {
    if (!hasPlace(uri)) return null;
    const folder = folderOf(uri) ?? uri;
    const known = this.#found.get(decoded(folder));
    if (known !== undefined) return known?.isRead === true ? known : null;
    this.#found.set(decoded(folder), null);
    void this.#find(folder);
    return null;
  }

  /** Waits until the set of a note has been read. */
  async ready(uri: string): Promise<LiveSet | null> {
    const folder = folderOf(uri);
    if (!hasPlace(uri) || folder === undefined) return null;
    const known = this.#found.get(decoded(folder));
    return known?.isRead === true ? known : this.#find(folder);
  }

  /** Files changed outside the editor. */
  async filesChanged(uris: readonly string[]): Promise<void> {
    if (uris.some(isDepartment)) {
      const folders = [...this.#sets.values()];
      this.#found.clear();
      this.#sets.clear();
      for (const set of folders) this.#changed(set);
      return;
    }
    for (const set of this.#sets.values()) {
      const inSet = uris.filter((uri) => isWithin(uri, set.root));
      if (inSet.length === 0) continue;
      await set.readAgain(inSet);
      this.#changed(set);
    }
  }

  async #find(folder: string): Promise<LiveSet | null> {
    const root = await this.#rootOf(folder);
    const key = decoded(root?.folder ?? folder);
    let set = this.#sets.get(key);
    if (set === undefined) {
      set = new LiveSet(root?.folder ?? folder, this.#files, this.#open, root?.department);
      this.#sets.set(key, set);
    }
    this.#found.set(decoded(folder), set);
    const first = !set.isRead;
    await set.read();
    if (first) this.#changed(set);
    return set;
  }

  /** The nearest folder with a department file, upward to the folder that is open in the editor. */
  async #rootOf(folder: string): Promise<{ folder: string; department: NoteReading } | undefined> {
    const top = this.#folders.find((open) => decoded(open) === decoded(folder) || isWithin(folder, open));
    for (let at: string | undefined = folder; at !== undefined; at = folderOf(at)) {
      const uri = `${at}/${DEPARTMENT_FILE}`;
      const open = this.#open.reading(uri);
      const text = open === undefined ? await this.#files.read(uri) : open.text;
      if (text !== null) return { folder: at, department: open ?? readNote(text, 'department') };
      if (top !== undefined && decoded(at) === decoded(top)) return undefined;
    }
    return undefined;
  }
}
