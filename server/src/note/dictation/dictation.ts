import { Lately } from '../lately.ts';
import type { Path, Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import { dictate, type DictationMemory } from './dictate.ts';
import { keptDictation, type KeptDictation } from './kept-text.ts';
import { dictationOffers, progressOf, wordsFor, type DictationOffer } from './offers.ts';
import type { DictationResult } from './result.ts';

/** The dictation in a note, and what it says beside that note. */
export interface DictatedIn {
  readonly kept: KeptDictation;
  readonly result: DictationResult;
}

/**
 * What the rest of the program may ask about the dictation in a note. The phrase table and its engine are large and
 * seldom wanted: they are loaded where a note holds a dictation, and handed in.
 */
export interface Dictation {
  /** The same answer for the same reading; undefined for a note without a dictation. */
  in(reading: NoteReading): DictatedIn | undefined;
  /** What can be written from the dictation at the cursor or from selected words. */
  offers(reading: NoteReading, range: Span): readonly DictationOffer[];
  /** The words that a field was dictated in, or undefined. */
  wordsFor(reading: NoteReading, path: Path): string | undefined;
  /** How much of the dictation is in the note, and where to say so. */
  progress(reading: NoteReading): { readonly at: number; readonly text: string } | undefined;
}

/** What understands dictations. It remembers what was asked last for as long as it is kept, and belongs to who made it. */
export function newDictation(): Dictation {
  const before = new Lately<NoteReading, DictatedIn>();
  const memory: DictationMemory = {};
  const dictatedIn = (reading: NoteReading): DictatedIn | undefined => {
    const known = before.get(reading);
    if (known !== undefined) return known;
    const kept = reading.kind === 'operation' ? keptDictation(reading) : undefined;
    if (kept === undefined || kept.text.trim() === '') return undefined;
    const made = { kept, result: dictate(kept.text, reading, memory) };
    before.set(reading, made);
    return made;
  };
  return {
    in: dictatedIn,
    offers: (reading, range) => {
      const said = dictatedIn(reading);
      const kept = said === undefined ? undefined : { spanOf: said.kept.spanOf, values: said.result.values };
      return dictationOffers(reading, kept, range);
    },
    wordsFor: (reading, path) => {
      const said = dictatedIn(reading);
      return said === undefined ? undefined : wordsFor(said.result.values, path);
    },
    progress: (reading) => {
      const said = dictatedIn(reading);
      return said === undefined ? undefined : progressOf(reading, said.result);
    },
  };
}
