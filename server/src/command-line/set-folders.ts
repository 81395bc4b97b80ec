import { dirname, join } from 'node:path';
import { DEPARTMENT_FILE, isNoteName } from '../note/set/set-layout.ts';
import { notesBelow } from './find-notes.ts';
import type { Files } from './world.ts';

/** The folder of a set: the one with a department file, or, without any, the folder of the note. */
export interface SetFolder {
  readonly folder: string;
  readonly hasDepartment: boolean;
}

/** Which set a note belongs to, and which notes a set has, by names alone: nothing is read. */
export class SetFolders {
  readonly #files: Files;
  readonly #roots = new Map<string, string | null>();
  readonly #notes = new Map<string, readonly string[]>();

  constructor(files: Files) {
    this.#files = files;
  }

  /** The set that the notes of a folder belong to: the nearest folder at or above it with a department file. */
  setAt(folder: string): SetFolder {
    const root = this.#rootOf(folder);
    return { folder: root ?? folder, hasDepartment: root !== null };
  }

  /** Every note of a set, absolute, in the order of their names. */
  notesOf({ folder, hasDepartment }: SetFolder): readonly string[] {
    let notes = this.#notes.get(folder);
    if (notes === undefined) {
      notes = hasDepartment ? this.#below(folder) : this.#directlyIn(folder);
      this.#notes.set(folder, notes);
    }
    return notes;
  }

  /** A set reaches down to the next department file. */
  #below(folder: string): readonly string[] {
    return notesBelow(folder, this.#files).filter((path) => isNoteName(path) && this.#rootOf(dirname(path)) === folder);
  }

  #directlyIn(folder: string): readonly string[] {
    return this.#files.list(folder).flatMap(({ name, kind }) => {
      return kind === 'file' && isNoteName(name) ? [join(folder, name)] : [];
    });
  }

  #rootOf(folder: string): string | null {
    const known = this.#roots.get(folder);
    if (known !== undefined) return known;
    const above = dirname(folder);
    const root =
      this.#files.kind(join(folder, DEPARTMENT_FILE)) === 'file'
        ? folder
        : above === folder
          ? null
          : this.#rootOf(above);
    this.#roots.set(folder, root);
    return root;
  }
}
