import type { Path } from '@sideport/schemas';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Around } from '../note/editing/around.ts';
import { computeNote, type ComputedNote } from '../note/computing/compute-note.ts';
import type { Dictation } from '../note/dictation/dictation.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { readNote } from '../note/reading/read-note.ts';
import type { Remark } from '../note/remark.ts';
import { contextOf, remarksOf, type Surroundings } from '../note/review.ts';
import { decoded, isDepartment, nameWithin } from './addresses.ts';
import { lineIndexOf, type LineIndex } from './line-index.ts';
import type { LiveSet } from './live-set.ts';
import type { NoteSets } from './note-sets.ts';
import type { OpenDocuments } from './open-documents.ts';

/** One version of an open note, read, computed and checked at most once. */
export interface OpenNote {
  readonly uri: string;
  readonly version: number;
  readonly lines: LineIndex;
  readonly reading: NoteReading;
  readonly set: LiveSet | null;
  readonly around: Around;
  /** Made when they are first asked for: a question right behind an edit does not wait for the checks. */
  readonly computed: ComputedNote;
  /** The values that stand beside a place, perhaps with others; made sooner than all of them. */
  computedBeside(path: Path): ComputedNote;
  readonly remarks: readonly Remark[];
}

interface Known {
  readonly document: TextDocument;
  readonly reading: NoteReading;
  readonly lines: LineIndex;
  made?: Made;
}

/** What was made of a note, and what it rests on besides its text. */
interface Made {
  readonly set: LiveSet | null;
  readonly revision: number;
  readonly today: string;
  readonly dictation: Dictation | null;
  computed?: ComputedNote;
  remarks?: readonly Remark[];
}

/** The open notes: every request about one version is answered from one reading of it. */
export class NoteBook {
  readonly #documents: OpenDocuments;
  readonly #today: () => string;
  readonly #known = new Map<string, Known>();
  sets: NoteSets | undefined;
  /** What understands dictations, once it is loaded. */
  dictation: Dictation | null = null;

  constructor(documents: OpenDocuments, today: () => string) {
    this.#documents = documents;
    this.#today = today;
  }

  /** The note as it is written now, or undefined when it is not open. */
  note(uri: string): OpenNote | undefined {
    const known = this.#read(uri);
    if (known === undefined) return undefined;
    const set = this.sets?.of(uri) ?? null;
    const surroundings = this.#surroundings(uri, set);
    const made = madeOf(known, set, surroundings);
    return {
      uri: known.document.uri,
      version: known.document.version,
      lines: known.lines,
      reading: known.reading,
      set,
      around: { reading: known.reading, surroundings },
      get computed() {
        return (made.computed ??= computeNote(contextOf(known.reading, surroundings)));
      },
      computedBeside(path) {
        return made.computed ?? computeNote(contextOf(known.reading, surroundings), path);
      },
      get remarks() {
        return (made.remarks ??= remarksOf(known.reading, surroundings));
      },
    };
  }

  /** Makes the computed values ready for whoever asks next. */
  compute(uri: string): void {
    void this.note(uri)?.computed;
  }

  uris(): readonly string[] {
    return this.#documents.all().map(({ uri }) => uri);
  }

  reading(uri: string): NoteReading | undefined {
    return this.#read(uri)?.reading;
  }

  forget(uri: string): void {
    this.#known.delete(decoded(uri));
  }

  #read(uri: string): Known | undefined {
    const document = this.#documents.get(uri);
    if (document === undefined) return undefined;
    const before = this.#known.get(decoded(uri));
    if (before?.document === document) return before;
    const reading = readNote(document.getText(), kindOf(document));
    const known: Known = { document, reading, lines: lineIndexOf(document) };
    this.#known.set(decoded(uri), known);
    return known;
  }

  #surroundings(uri: string, set: LiveSet | null): Surroundings {
    const reading = this.#known.get(decoded(uri))?.reading;
    const dictated = reading?.kind === 'operation' && reading.note.dictation !== undefined;
    return {
      dictation: dictated ? this.dictation : null,
      department: set?.department ?? null,
      departmentFile: set?.departmentFile ?? null,
      set,
      file: set === null ? null : nameWithin(uri, set.root),
      today: this.#today(),
    };
  }
}

/** What is made already, as long as nothing that it rests on has changed. */
function madeOf(known: Known, set: LiveSet | null, { today, dictation }: Surroundings): Made {
  const now = { set, revision: set?.revision ?? 0, today: today ?? '', dictation: dictation ?? null };
  const { made } = known;
  const isCurrent =
    made?.set === now.set &&
    made.revision === now.revision &&
    made.today === now.today &&
    made.dictation === now.dictation;
  return isCurrent ? made : (known.made = now);
}

function kindOf(document: TextDocument): 'department' | undefined {
  return document.languageId === 'opnote-department' || isDepartment(document.uri) ? 'department' : undefined;
}
