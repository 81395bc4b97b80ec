import type { NoteReading } from '../reading/note-reading.ts';
import { detached } from '../detached.ts';
import { readNote } from '../reading/read-note.ts';

/** The few facts of a note by which the notes of a set are compared; small, so that thousands fit in memory. */
export interface NoteFacts {
  readonly file: string;
  readonly record: 'operation' | 'follow-up' | 'amendment';
  readonly status: 'planned' | 'draft' | 'final';
  readonly id?: string;
  /** For a follow-up the operation's id, for an amendment the amended note's id. */
  readonly pointsTo?: string;
  readonly patient?: string;
  readonly born?: number;
  readonly eye?: 'right' | 'left';
  readonly whichEye?: 'first' | 'second';
  readonly date?: string;
  /** When an amendment was written. */
  readonly at?: string;
  /** What kind of operation it was, in the words of the vocabulary. */
  readonly procedure?: string;
  readonly lensModel?: string;
  readonly lensSerial?: string;
  readonly lensLot?: string;
  /** The narrative, shortened to a fingerprint: two notes with the same one share their words. */
  readonly narrative?: string;
}

/** The notes of one set, as a check or a computation sees them. */
export interface NoteSet {
  readonly facts: readonly NoteFacts[];
  /** Reads a note of the set in full, or undefined when it cannot be had. */
  open(file: string): NoteReading | undefined;
  /**
   * The facts of every note in which all these words may be written, and perhaps of some others; undefined where all
   * facts are at hand. It spares whoever looks at one note of a large set the reading of all the others.
   */
  holding?(words: readonly string[]): readonly NoteFacts[] | undefined;
}

/** The sections that facts are taken from; the head and its kind come with them. */
const FACT_SECTIONS: ReadonlySet<string> = new Set([
  'opnote',
  'record',
  'status',
  'id',
  'date',
  'procedure',
  'operation',
  'amends',
  'at',
  'patient',
  'procedure',
  'eye',
  'which-eye',
  'lens',
  'findings',
  'free-text',
  'dictation',
]);

/** The facts of a text, without reading all of it; the same as those of the whole reading. */
export function factsIn(text: string, file: string): NoteFacts | undefined {
  const facts = factsOf(readNote(text, undefined, FACT_SECTIONS), file);
  // A part of a text keeps the whole text in memory; thousands of notes would stay there for their ids. A copy does not.
  return facts && detached(facts);
}

/** The facts of one note, or undefined for a department file and a text that is no note. */
export function factsOf(reading: NoteReading, file: string): NoteFacts | undefined {
  if (reading.kind === null || reading.kind === 'department') return undefined;
  const { note } = reading;
  const facts: Record<string, unknown> = { file, record: reading.kind, status: reading.status };
  const put = (key: keyof NoteFacts, value: unknown) => {
    if (value !== undefined) facts[key] = value;
  };
  put('id', note.id?.value);
  put('patient', note.patient?.ref?.value);
  put('born', note.patient?.born?.value);
  put('eye', note.eye?.value);
  if (reading.kind === 'operation') {
    put('whichEye', reading.note['which-eye']?.value);
    put('date', reading.note.date?.value);
    put('procedure', reading.note.procedure?.value);
    put('lensModel', reading.note.lens?.model?.value);
    put('lensSerial', reading.note.lens?.serial?.value);
    put('lensLot', reading.note.lens?.lot?.value);
    put(
      'narrative',
      fingerprint([reading.note.findings?.value, reading.note['free-text']?.value, reading.note.dictation?.value]),
    );
  } else if (reading.kind === 'follow-up') {
    put('pointsTo', reading.note.operation?.value);
    put('date', reading.note.date?.value);
  } else {
    put('pointsTo', reading.note.amends?.value);
    put('at', reading.note.at?.value);
  }
  return facts as unknown as NoteFacts;
}

/** By which facts notes are looked up. */
export type LookedUpBy = 'id' | 'pointsTo' | 'patient' | 'lensSerial' | 'lensLot' | 'narrative';

type Index = ReadonlyMap<string, readonly NoteFacts[]>;

/** Made once per list of facts, so that a thousand notes are not compared with a thousand others. */
const indexes = new WeakMap<readonly NoteFacts[], Map<LookedUpBy, Index>>();

/** All notes of the set with this id. */
export function notesWithId(set: NoteSet, id: string): readonly NoteFacts[] {
  return notesWith(set, 'id', id);
}

/** All follow-ups and amendments of the set that point to this id. */
export function notesPointingTo(set: NoteSet, id: string): readonly NoteFacts[] {
  return notesWith(set, 'pointsTo', id);
}

/** All notes of the set with a fact. `words` are what is written in each of them, where that is not the fact itself. */
export function notesWith(
  set: NoteSet,
  key: LookedUpBy,
  value: string,
  words: readonly string[] = [value],
): readonly NoteFacts[] {
  const some = set.holding?.(words);
  return some === undefined ? (indexOf(set.facts, key).get(value) ?? []) : some.filter((one) => one[key] === value);
}

function indexOf(facts: readonly NoteFacts[], key: LookedUpBy): Index {
  const known = indexes.get(facts) ?? new Map<LookedUpBy, Index>();
  indexes.set(facts, known);
  let index = known.get(key);
  if (index === undefined) {
    index = indexBy(facts, key);
    known.set(key, index);
  }
  return index;
}

function indexBy(facts: readonly NoteFacts[], key: LookedUpBy): Index {
  const index = new Map<string, NoteFacts[]>();
  for (const one of facts) {
    const value = one[key];
    if (value === undefined) continue;
    const same = index.get(value);
    if (same === undefined) index.set(value, [one]);
    else same.push(one);
  }
  return index;
}

const NARRATIVE_FROM = 60;

function fingerprint(texts: readonly (string | undefined)[]): string | undefined {
  const words = texts
    .filter((text) => text !== undefined)
    .join(' ')
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, ' ')
    .trim();
  if (words.length < NARRATIVE_FROM) return undefined;
  // Two hashes of 32 bits from different beginnings, after Fowler, Noll and Vo.
  let one = 0x811c9dc5;
  let two = 0x5bd1e995;
  for (let i = 0; i < words.length; i++) {
    const letter = words.charCodeAt(i);
    one = Math.imul(one ^ letter, 0x01000193);
    two = Math.imul(two ^ letter, 0x01000193) ^ (one >>> 15);
  }
  return `${(one >>> 0).toString(16)}-${(two >>> 0).toString(16)}`;
}
