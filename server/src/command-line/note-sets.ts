import { dirname, join, resolve } from 'node:path';
import type { Department } from '@sideport/schemas';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { readNote } from '../note/reading/read-note.ts';
import type { Surroundings } from '../note/review.ts';
import { factsIn, factsOf, type NoteFacts, type NoteSet } from '../note/set/note-set.ts';
import { DEPARTMENT_FILE, isNoteName, shownAs } from './file-names.ts';
import { notesBelow, type Input } from './find-notes.ts';
import { FileProblem, today, type World } from './world.ts';

/** Facts of a file, by its absolute path, that were read before. */
export type KnownFacts = (path: string) => NoteFacts | null | undefined;

/**
 * What stands around the notes of a run: for each set its department file and the facts of all its notes, both read
 * when first asked for. A set is the folder with a sideport.yaml and all below it down to the next one; without any,
 * the notes of one folder.
 */
export class NoteSets {
  readonly #world: World;
  readonly #department: Department | null | undefined;
  readonly #known: KnownFacts;
  readonly #roots = new Map<string, string | null>();
  readonly #sets = new Map<string, DiskSet>();

  /**
   * With `department`, that file counts for every note. Throws FileProblem when it cannot be read. With `known`, facts
   * that are known already are not read again: null for a file that has none, undefined for one that is not known.
   */
  constructor(world: World, department?: string, known: KnownFacts = () => undefined) {
    this.#world = world;
    this.#known = known;
    if (department === undefined) return;
    const file = resolve(world.folder, department);
    try {
      this.#department = departmentIn(world.files.read(file));
    } catch (error) {
      throw error instanceof FileProblem ? new FileProblem(`${department}: ${error.message}.`) : error;
    }
  }

  /** The surroundings of a note that was read. */
  around({ path, file }: Input, reading: NoteReading): Surroundings & { readonly set: NoteSet } {
    const { folder, now } = this.#world;
    const set = this.#setOf(path === null ? folder : dirname(path));
    if (path !== null) set.keep(file, reading);
    return {
      department: this.departmentAt(path === null ? folder : dirname(path)),
      set: path === null ? withNote(set, reading, file) : set,
      file,
      today: today(now()),
    };
  }

  /** The department file that counts for a note; null stands for standard input. */
  departmentFor(path: string | null): Department | null {
    if (this.#department !== undefined) return this.#department;
    return this.#setOf(path === null ? this.#world.folder : dirname(path)).department;
  }

  /** Every note of the set that a note belongs to, absolute. */
  notesAround(path: string): readonly string[] {
    return this.#setOf(dirname(path)).notes;
  }

  /** The folder of the set that a note belongs to. */
  rootAround(path: string): { readonly folder: string; readonly hasDepartment: boolean } {
    const root = this.#rootOf(dirname(path));
    return { folder: root ?? dirname(path), hasDepartment: root !== null };
  }

  /** The department of notes in a folder. */
  departmentAt(folder: string): Department | null {
    return this.#department === undefined ? this.#setOf(folder).department : this.#department;
  }

  #setOf(folder: string): DiskSet {
    const root = this.#rootOf(folder);
    const key = root ?? folder;
    let set = this.#sets.get(key);
    if (set === undefined) {
      const belongs = (note: string) => this.#rootOf(dirname(note)) === root;
      set = new DiskSet(this.#world, key, root !== null, belongs, this.#known);
      this.#sets.set(key, set);
    }
    return set;
  }

  #rootOf(folder: string): string | null {
    const known = this.#roots.get(folder);
    if (known !== undefined) return known;
    const above = dirname(folder);
    const root =
      this.#world.files.kind(join(folder, DEPARTMENT_FILE)) === 'file'
        ? folder
        : above === folder
          ? null
          : this.#rootOf(above);
    this.#roots.set(folder, root);
    return root;
  }
}

/** How many notes of a set are kept in full: a follow-up and its operation are often asked for together. */
const KEPT = 8;

/** A set on disk. A note that cannot be read is left out: it gets its own message when it is itself asked for. */
export class DiskSet implements NoteSet {
  readonly #world: World;
  readonly #folder: string;
  readonly #hasDepartment: boolean;
  readonly #belongs: (note: string) => boolean;
  readonly #known: KnownFacts;
  readonly #kept = new Map<string, NoteReading>();
  #notes: readonly string[] | undefined;
  #facts: readonly NoteFacts[] | undefined;
  #department: Department | null | undefined;

  constructor(
    world: World,
    folder: string,
    hasDepartment: boolean,
    belongs: (note: string) => boolean,
    known: KnownFacts = () => undefined,
  ) {
    this.#world = world;
    this.#folder = folder;
    this.#hasDepartment = hasDepartment;
    this.#belongs = belongs;
    this.#known = known;
  }

  get department(): Department | null {
    if (!this.#hasDepartment) return null;
    return (this.#department ??= this.#readDepartment());
  }

  /** The notes of the set, absolute. */
  get notes(): readonly string[] {
    return (this.#notes ??= this.#findNotes());
  }

  get facts(): readonly NoteFacts[] {
    return (this.#facts ??= this.#readFacts());
  }

  open(file: string): NoteReading | undefined {
    const kept = this.#kept.get(file);
    if (kept !== undefined) return kept;
    const text = this.#read(resolve(this.#world.folder, file));
    if (text === undefined) return undefined;
    const reading = readNote(text);
    this.keep(file, reading);
    return reading;
  }

  /** Keeps a reading that may be asked for again soon. */
  keep(file: string, reading: NoteReading): void {
    const oldest = this.#kept.size >= KEPT ? this.#kept.keys().next().value : undefined;
    if (oldest !== undefined) this.#kept.delete(oldest);
    this.#kept.set(file, reading);
  }

  #readDepartment(): Department | null {
    const text = this.#read(join(this.#folder, DEPARTMENT_FILE));
    return text === undefined ? null : departmentIn(text);
  }

  #readFacts(): readonly NoteFacts[] {
    return this.notes.flatMap((path) => {
      const known = this.#known(path);
      if (known !== undefined) return known === null ? [] : [known];
      const file = shownAs(path, this.#world.folder);
      const kept = this.#kept.get(file);
      const text = kept === undefined ? this.#read(path) : undefined;
      const facts = kept !== undefined ? factsOf(kept, file) : text === undefined ? undefined : factsIn(text, file);
      return facts === undefined ? [] : [facts];
    });
  }

  #findNotes(): readonly string[] {
    const { files } = this.#world;
    if (this.#hasDepartment)
      return notesBelow(this.#folder, files).filter((path) => isNoteName(path) && this.#belongs(path));
    return files.list(this.#folder).flatMap(({ name, kind }) => {
      return kind === 'file' && isNoteName(name) ? [join(this.#folder, name)] : [];
    });
  }

  #read(path: string): string | undefined {
    try {
      return this.#world.files.read(path);
    } catch (error) {
      if (error instanceof FileProblem) return undefined;
      throw error;
    }
  }
}

/** Standard input counts as a note of the working folder, in the place of the one with its id. */
function withNote(set: NoteSet, reading: NoteReading, file: string): NoteSet {
  const own = factsOf(reading, file);
  if (own === undefined) return set;
  return {
    facts: [...set.facts.filter(({ id }) => id === undefined || id !== own.id), own],
    open: (asked) => (asked === file ? reading : set.open(asked)),
  };
}

function departmentIn(text: string): Department | null {
  const reading = readNote(text, 'department');
  return reading.kind === 'department' ? reading.note : null;
}
