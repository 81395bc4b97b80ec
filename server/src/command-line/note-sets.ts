import { dirname, join, resolve } from 'node:path';
import type { Department } from '@sideport/schemas';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { readNote } from '../note/reading/read-note.ts';
import { Lately } from '../note/lately.ts';
import type { Surroundings } from '../note/review.ts';
import { factsIn, factsOf, type NoteFacts, type NoteSet } from '../note/set/note-set.ts';
import { DEPARTMENT_FILE } from '../note/set/set-layout.ts';
import { shownAs } from './file-names.ts';
import type { Input } from './find-notes.ts';
import { SetFolders, type SetFolder } from './set-folders.ts';
import { SetTexts } from './set-texts.ts';
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
  /** The department file that counts for every note: what it says, and its name. */
  readonly #given: { readonly department: Department | null; readonly file: string } | undefined;
  readonly #known: KnownFacts;
  readonly #folders: SetFolders;
  readonly #sets = new Map<string, DiskSet>();

  /**
   * With `department`, that file counts for every note. Throws FileProblem when it cannot be read. With `known`, facts
   * that are known already are not read again: null for a file that has none, undefined for one that is not known.
   */
  constructor(world: World, department?: string, known: KnownFacts = () => undefined) {
    this.#world = world;
    this.#folders = new SetFolders(world.files);
    this.#known = known;
    if (department === undefined) return;
    const file = resolve(world.folder, department);
    try {
      this.#given = { department: departmentIn(world.files.read(file)), file: shownAs(file, world.folder) };
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
      department: this.#given === undefined ? set.department : this.#given.department,
      departmentFile: this.#given === undefined ? set.departmentFile : this.#given.file,
      set: path === null ? withNote(set, reading, file) : set,
      file,
      today: today(now()),
    };
  }

  /** The folder of the set that a note belongs to. */
  rootAround(path: string): SetFolder {
    return this.#folders.setAt(dirname(path));
  }

  /** The department of notes in a folder. */
  departmentAt(folder: string): Department | null {
    return this.#given === undefined ? this.#setOf(folder).department : this.#given.department;
  }

  #setOf(folder: string): DiskSet {
    const at = this.#folders.setAt(folder);
    let set = this.#sets.get(at.folder);
    if (set === undefined) {
      set = new DiskSet(this.#world, at, () => this.#folders.notesOf(at), this.#known);
      this.#sets.set(at.folder, set);
    }
    return set;
  }
}

/** A set on disk. A note that cannot be read is left out: it gets its own message when it is itself asked for. */
export class DiskSet implements NoteSet {
  readonly #world: World;
  readonly #at: SetFolder;
  readonly #notes: () => readonly string[];
  readonly #known: KnownFacts;
  /** Notes in full: a follow-up and its operation are often asked for together. */
  readonly #kept = new Lately<string, NoteReading>();
  readonly #found = new Map<string, NoteFacts | null>();
  #facts: readonly NoteFacts[] | undefined;
  #texts: SetTexts | undefined;
  #department: Department | null | undefined;

  /** `notes` names the notes of the set, absolute. */
  constructor(world: World, at: SetFolder, notes: () => readonly string[], known: KnownFacts) {
    this.#world = world;
    this.#at = at;
    this.#notes = notes;
    this.#known = known;
  }

  get department(): Department | null {
    if (!this.#at.hasDepartment) return null;
    return (this.#department ??= this.#readDepartment());
  }

  /** The name of the department file, as the notes are named; null without one. */
  get departmentFile(): string | null {
    return this.#at.hasDepartment ? shownAs(join(this.#at.folder, DEPARTMENT_FILE), this.#world.folder) : null;
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
    this.#kept.set(file, reading);
  }

  /** Without its department file a set would be checked by other rules: one that cannot be read is said. */
  #readDepartment(): Department | null {
    try {
      return departmentIn(this.#world.files.read(join(this.#at.folder, DEPARTMENT_FILE)));
    } catch (error) {
      throw error instanceof FileProblem ? new FileProblem(`${this.departmentFile}: ${error.message}.`) : error;
    }
  }

  holding(words: readonly string[]): readonly NoteFacts[] | undefined {
    if (this.#facts !== undefined || this.#notes().some((path) => this.#known(path) !== undefined)) return undefined;
    this.#texts ??= new SetTexts(this.#notes(), (path) => this.#read(path));
    return this.#texts.holding(words).flatMap((path) => this.#factsAt(path));
  }

  #readFacts(): readonly NoteFacts[] {
    return this.#notes().flatMap((path) => this.#factsAt(path));
  }

  #factsAt(path: string): readonly NoteFacts[] {
    const known = this.#known(path) ?? this.#found.get(path);
    if (known !== undefined) return known === null ? [] : [known];
    const file = shownAs(path, this.#world.folder);
    const kept = this.#kept.get(file);
    const text = kept === undefined ? this.#read(path) : undefined;
    const facts = kept !== undefined ? factsOf(kept, file) : text === undefined ? undefined : factsIn(text, file);
    this.#found.set(path, facts ?? null);
    return facts === undefined ? [] : [facts];
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
