import type { Department } from '@sideport/schemas';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { readNote } from '../note/reading/read-note.ts';
import { factsOf, type NoteFacts, type NoteSet } from '../note/set/note-set.ts';
import { DEPARTMENT_FILE, decoded, folderOf, isDepartment, nameWithin } from './addresses.ts';
import type { OpenReadings } from './note-sets.ts';
import type { SetFiles } from './runtime.ts';

/** How many notes are kept as they were read; the others are kept as text. */
const KEPT = 32;
/** So many files are asked for at once, and so many notes are read before anything else gets its turn. */
const AT_ONCE = 16;

/** One set as it stands now: what is stored, with the open documents in the place of their files. */
export class LiveSet implements NoteSet {
  readonly root: string;
  /** The department file as it was read last; undefined: the set has none. */
  departmentReading: NoteReading | undefined;
  /** Grows with every change that another note of the set can notice. */
  revision = 0;
  isRead = false;
  facts: readonly NoteFacts[] = [];
  readonly #files: SetFiles;
  readonly #open: OpenReadings;
  /** By name within the set. */
  readonly #notes = new Map<string, { readonly uri: string; readonly text: string }>();
  readonly #facts = new Map<string, NoteFacts>();
  readonly #kept = new Map<string, NoteReading>();
  /** Open notes as the others know them. */
  readonly #said = new Map<string, NoteReading>();
  #reading: Promise<void> | undefined;

  constructor(root: string, files: SetFiles, open: OpenReadings, department: NoteReading | undefined) {
    this.root = root;
    this.#files = files;
    this.#open = open;
    this.departmentReading = department;
  }

  get department(): Department | null {
    return this.departmentReading?.kind === 'department' ? this.departmentReading.note : null;
  }

  get departmentUri(): string | undefined {
    return this.departmentReading === undefined ? undefined : `${this.root}/${DEPARTMENT_FILE}`;
  }

  /** Reads all notes of the set once. */
  read(): Promise<void> {
    return (this.#reading ??= this.#readAll());
  }

  async readAgain(uris: readonly string[]): Promise<void> {
    await this.#take(uris.filter((uri) => !isDepartment(uri)));
  }

  /** Takes in what an open note says now. True when other notes of the set can notice the change. */
  noteChanged(uri: string, reading: NoteReading): boolean {
    if (reading.kind === 'department') {
      if (this.departmentReading === reading) return false;
      this.departmentReading = reading;
      this.revision += 1;
      return true;
    }
    const name = nameWithin(uri, this.root);
    if (!this.#notes.has(name)) this.#notes.set(name, { uri, text: reading.text });
    const facts = factsOf(reading, name);
    if (this.#put(name, facts)) return true;
    // What points to it reads all of it, not only its facts.
    const isNews =
      this.#said.get(name) !== reading &&
      this.facts.some(({ pointsTo }) => pointsTo !== undefined && pointsTo === facts?.id);
    this.#said.set(name, reading);
    if (isNews) this.revision += 1;
    return isNews;
  }

  /** The name of the department file within the set; null without one. */
  get departmentFile(): string | null {
    return this.departmentReading === undefined ? null : DEPARTMENT_FILE;
  }

  open(file: string): NoteReading | undefined {
    if (file === DEPARTMENT_FILE) return this.departmentReading;
    const note = this.#notes.get(file);
    if (note === undefined) return undefined;
    const open = this.#open.reading(note.uri);
    if (open !== undefined) return open;
    const kept = this.#kept.get(file) ?? readNote(note.text);
    this.#keep(file, kept);
    return kept;
  }

  uriOf(file: string): string | undefined {
    if (file === DEPARTMENT_FILE) return this.departmentUri;
    return this.#notes.get(file)?.uri;
  }

  /** The notes whose text holds a word, read in full. */
  *notesWith(word: string): Generator<{ readonly uri: string; readonly reading: NoteReading }> {
    for (const [file, { uri, text }] of this.#notes) {
      const open = this.#open.reading(uri);
      if (!(open?.text ?? text).includes(word)) continue;
      const reading = open ?? this.open(file);
      if (reading !== undefined) yield { uri, reading };
    }
  }

  async #readAll(): Promise<void> {
    const listed = await this.#files.list(this.root, this.departmentReading !== undefined);
    // A department file further down begins a set of its own.
    const others = listed.filter((uri) => isDepartment(uri)).map((uri) => decoded(folderOf(uri) ?? uri));
    const inner = others.filter((folder) => folder !== decoded(this.root));
    await this.#take(
      listed.filter((uri) => !isDepartment(uri) && !inner.some((folder) => decoded(uri).startsWith(`${folder}/`))),
    );
    this.isRead = true;
  }

  async #take(uris: readonly string[]): Promise<void> {
    for (let from = 0; from < uris.length; from += AT_ONCE) {
      const some = uris.slice(from, from + AT_ONCE);
      const texts = await Promise.all(some.map((uri) => this.#files.read(uri)));
      for (const [index, uri] of some.entries()) this.#takeOne(uri, texts[index] ?? null);
    }
  }

  #takeOne(uri: string, text: string | null): void {
    const name = nameWithin(uri, this.root);
    this.#kept.delete(name);
    const open = this.#open.reading(uri);
    if (text === null && open === undefined) {
      this.#notes.delete(name);
      this.#put(name, undefined);
      return;
    }
    this.#notes.set(name, { uri, text: text ?? '' });
    this.#put(name, factsOf(open ?? readNote(text ?? ''), name));
  }

  #put(name: string, facts: NoteFacts | undefined): boolean {
    if (JSON.stringify(this.#facts.get(name)) === JSON.stringify(facts)) return false;
    if (facts === undefined) this.#facts.delete(name);
    else this.#facts.set(name, facts);
    this.facts = [...this.#facts.values()];
    this.revision += 1;
    return true;
  }

  #keep(file: string, reading: NoteReading): void {
    this.#kept.delete(file);
    this.#kept.set(file, reading);
    const oldest = this.#kept.size > KEPT ? this.#kept.keys().next().value : undefined;
    if (oldest !== undefined) this.#kept.delete(oldest);
  }
}
