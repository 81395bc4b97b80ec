import type { NoteReading } from '../reading/note-reading.ts';
import { dictate } from './dictate.ts';
import { keptDictation, type KeptDictation } from './kept-text.ts';
import { noteFromDictation, placeValues } from './placing.ts';
import type { DictationResult } from './result.ts';

/** The dictation in a note, and what it says beside that note. */
export interface DictatedIn {
  readonly kept: KeptDictation;
  readonly result: DictationResult;
}

/**
 * What the rest of the program may ask about dictation. The phrase table and its engine are large and seldom wanted:
 * they are loaded where a note holds a dictation, and handed in.
 */
export interface Dictation {
  /** The same answer for the same reading; undefined for a note without a dictation. */
  readonly in: (reading: NoteReading) => DictatedIn | undefined;
  readonly dictate: typeof dictate;
  readonly placeValues: typeof placeValues;
  readonly noteFromDictation: typeof noteFromDictation;
}

const before = new WeakMap<NoteReading, DictatedIn>();

function dictatedIn(reading: NoteReading): DictatedIn | undefined {
  const known = before.get(reading);
  if (known !== undefined) return known;
  const kept = reading.kind === 'operation' ? keptDictation(reading) : undefined;
  if (kept === undefined || kept.text.trim() === '') return undefined;
  const made = { kept, result: dictate(kept.text, reading) };
  before.set(reading, made);
  return made;
}

export const dictation: Dictation = { in: dictatedIn, dictate, placeValues, noteFromDictation };
