import type { Department } from '@sideport/schemas';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { readNote } from '../note/reading/read-note.ts';
import { factsOf, type NoteFacts, type NoteSet } from '../note/set/note-set.ts';
import { DEPARTMENT_FILE, isNoteName, isPassedOver } from '../note/set/set-layout.ts';
import { decoded, inFolder, isWithin, nameOf, nameWithin } from './addresses.ts';
import type { OpenReadings } from './note-sets.ts';
import type { SetFiles } from './runtime.ts';
import { listSet } from './set-listing.ts';

/** How many notes are kept as they were read; the others are kept as text. */
const KEPT = 32;
/** So many files are asked for at once, and so many notes are read before anything else gets its turn. */
const AT_ONCE = 16;

/** The folder of a set, and its department file as it was found; undefined: there is one, but it is no text. */
export interface SetRoot {
  readonly folder: string;
  readonly hasDepartment: boolean;
  readonly department?: NoteReading | undefined;
}

/** What is known of one note. */
interface Known {
  readonly uri: string;
  /** Null: it is not stored, or not as text. */
  readonly stored: string | null;
  /** The text that the other notes know: of an open note the one that they were told last; null: none. */
  readonly told: string | null;
  readonly facts: NoteFacts | undefined;
}

/**
 * One set as it stands now: what is stored, with the open documents in the place of their files. Files are asked for in
 * the background, and answers may come in another order than they were asked for: of each file the answer to the latest
 * question counts.
 */
export class LiveSet implements NoteSet {
  readonly root: string;
  readonly hasDepartment: boolean;
  /** The department file as it was read last; undefined: the set has none, or it is no text. */
  departmentReading: NoteReading | undefined;
  /** Grows with every change that another note of the set can notice. */
  revision = 0;
  isRead = false;
  readonly #files: SetFiles;
  readonly #open: OpenReadings;
  /** By name within the set. */
  readonly #notes = new Map<string, Known>();
  readonly #kept = new Map<string, NoteReading>();
  #facts: readonly NoteFacts[] | undefined;
  #inner: readonly string[] = [];
  /** How often files were asked for, and by name which of these questions was answered last. */
  #questions = 0;
  readonly #answered = new Map<string, number>();
  #reading: Promise<void> | undefined;

  constructor({ folder, hasDepartment, department }: SetRoot, files: SetFiles, open: OpenReadings) {
    this.root = folder;
    this.hasDepartment = hasDepartment;
    this.departmentReading = department;
    this.#files = files;
    this.#open = open;
  }

  get facts(): readonly NoteFacts[] {
    return (this.#facts ??= [...this.#notes.values()].flatMap(({ facts }) => facts ?? []));
  }

  get department(): Department | null {
    return this.departmentReading?.kind === 'department' ? this.departmentReading.note : null;
  }

  get departmentUri(): string | undefined {
    return this.hasDepartment ? inFolder(this.root, DEPARTMENT_FILE) : undefined;
  }

  /** The name of the department file within the set; null without one. */
  get departmentFile(): string | null {
    return this.hasDepartment ? DEPARTMENT_FILE : null;
  }

  /** Whether a note at this address belongs to the set. */
  holds(uri: string): boolean {
    if (!isWithin(uri, this.root)) return false;
    const folders = nameWithin(uri, this.root).split('/').slice(0, -1);
    if (!this.hasDepartment) return folders.length === 0;
    return !folders.some(isPassedOver) && !this.#inner.some((folder) => isWithin(uri, folder));
  }

  /** Reads all notes of the set once. Rejects when they cannot be reached; then the next call tries again. */
  read(): Promise<void> {
    return (this.#reading ??= this.#readAll().catch((fault: unknown) => {
      this.#reading = undefined;
      throw fault;
    }));
  }

  /** Reads notes again: some, or as many as the folders list now. */
  readAgain(uris?: readonly string[]): Promise<void> {
    return uris === undefined ? this.#readAll() : this.#take(uris);
  }

  /** Reads the department file again. False where there is none any more. */
  async readDepartmentAgain(): Promise<boolean> {
    const uri = this.departmentUri;
    if (uri === undefined) return true;
    const question = ++this.#questions;
    const stored = await this.#files.read(uri);
    const open = this.#open.reading(uri);
    if (stored === null && open === undefined) return false;
    if (this.#isNewest(DEPARTMENT_FILE, question)) this.#putDepartment(open ?? departmentIn(stored?.text ?? null));
    return true;
  }

  /** Takes in that an open note was stored as it is written. The others are told of what is written, not of this. */
  saved(uri: string, text: string): void {
    const name = nameWithin(uri, this.root);
    this.#isNewest(name, ++this.#questions);
    this.#kept.delete(name);
    this.#notes.set(name, { ...(this.#notes.get(name) ?? { uri, told: null, facts: undefined }), stored: text });
  }

  /** Takes in what an open document says now. True when notes of the set can notice the change. */
  noteChanged(uri: string, reading: NoteReading): boolean {
    if (reading.kind === 'department') return this.#isDepartment(uri) && this.#putDepartment(reading);
    if (!this.holds(uri)) return false;
    const name = nameWithin(uri, this.root);
    const before = this.#notes.get(name);
    const facts = factsOf(reading, name);
    this.#notes.set(name, {
      uri: before?.uri ?? uri,
      stored: before?.stored ?? null,
      told: reading.text,
      facts: before !== undefined && areSame(before.facts, facts) ? before.facts : facts,
    });
    // What points to it reads all of it, not only its facts.
    const isNews =
      !areSame(before?.facts, facts) || (before?.told !== reading.text && facts !== undefined && this.#isRead(facts));
    if (isNews) this.#news();
    return isNews;
  }

  open(file: string): NoteReading | undefined {
    if (file === DEPARTMENT_FILE) return this.departmentReading;
    const note = this.#notes.get(file);
    if (note === undefined) return undefined;
    const open = this.#open.reading(note.uri);
    if (open !== undefined) return open;
    if (note.stored === null) return undefined;
    const kept = this.#kept.get(file) ?? readNote(note.stored);
    this.#keep(file, kept);
    return kept;
  }

  uriOf(file: string): string | undefined {
    if (file === DEPARTMENT_FILE) return this.departmentUri;
    return this.#notes.get(file)?.uri;
  }

  /** The notes whose text holds a word, read in full. */
  *notesWith(word: string): Generator<{ readonly uri: string; readonly reading: NoteReading }> {
    for (const [file, { uri, stored }] of this.#notes) {
      const text = this.#open.reading(uri)?.text ?? stored;
      const reading = text?.includes(word) === true ? this.open(file) : undefined;
      if (reading !== undefined) yield { uri, reading };
    }
  }

  async #readAll(): Promise<void> {
    const question = ++this.#questions;
    const { notes, inner } = await listSet(this.#files, this.root, this.hasDepartment);
    this.#inner = inner;
    const listed = new Set(notes.map((uri) => nameWithin(uri, this.root)));
    await this.#take(notes);
    for (const [name, { uri }] of this.#notes) {
      // What came in while the folders were looked at stays, unless it turns out to belong to a set further down.
      if (!listed.has(name)) this.#put(uri, null, this.holds(uri) ? question : ++this.#questions);
    }
    this.isRead = true;
  }

  async #take(uris: readonly string[]): Promise<void> {
    for (let from = 0; from < uris.length; from += AT_ONCE) {
      const some = uris.slice(from, from + AT_ONCE);
      const question = ++this.#questions;
      const files = await Promise.all(
        some.map((uri) => (isNoteName(nameOf(uri)) ? this.#files.read(uri) : Promise.resolve(null))),
      );
      for (const [index, uri] of some.entries()) this.#put(uri, files[index]?.text ?? null, question);
    }
  }

  #isNewest(name: string, question: number): boolean {
    if (question < (this.#answered.get(name) ?? 0)) return false;
    this.#answered.set(name, question);
    return true;
  }

  #put(uri: string, stored: string | null, question: number): void {
    const name = nameWithin(uri, this.root);
    if (!this.#isNewest(name, question)) return;
    this.#kept.delete(name);
    const before = this.#notes.get(name);
    const open = this.#open.reading(uri);
    const told = open?.text ?? stored;
    if (told === null) {
      if (this.#notes.delete(name)) this.#news();
      return;
    }
    const isNews = before?.told !== told;
    const facts = isNews ? factsOf(open ?? readNote(told), name) : before.facts;
    this.#notes.set(name, { uri, stored, told, facts });
    if (isNews) this.#news();
  }

  #putDepartment(reading: NoteReading | undefined): boolean {
    const isNews = this.departmentReading?.text !== reading?.text;
    this.departmentReading = reading;
    if (isNews) this.revision += 1;
    return isNews;
  }

  #isDepartment(uri: string): boolean {
    return this.departmentUri !== undefined && decoded(uri) === decoded(this.departmentUri);
  }

  /** Whether another note of the set reads all of this one: it points to it, or is of the same patient's other operation. */
  #isRead({ file, id, record, patient }: NoteFacts): boolean {
    return this.facts.some(
      (other) =>
        other.file !== file &&
        ((other.pointsTo !== undefined && other.pointsTo === id) ||
          (record === 'operation' &&
            other.record === record &&
            other.patient !== undefined &&
            other.patient === patient)),
    );
  }

  #news(): void {
    this.#facts = undefined;
    this.revision += 1;
  }

  #keep(file: string, reading: NoteReading): void {
    this.#kept.delete(file);
    this.#kept.set(file, reading);
    const oldest = this.#kept.size > KEPT ? this.#kept.keys().next().value : undefined;
    if (oldest !== undefined) this.#kept.delete(oldest);
  }
}

/** What a stored department file says; undefined where it is no text. */
export function departmentIn(text: string | null): NoteReading | undefined {
  return text === null ? undefined : readNote(text, 'department');
}

function areSame(a: NoteFacts | undefined, b: NoteFacts | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
