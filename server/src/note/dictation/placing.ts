import type { Path } from '@sideport/schemas';
import { readNote } from '../reading/read-note.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import type { Edit } from '../remark.ts';
import type { Addition } from '../edits/additions.ts';
import { dictate } from './dictate.ts';
import { insertValues } from '../edits/insert-values.ts';
import { NoteView, valuePlanAt } from './note-view.ts';
import type { DictatedValue, DictationResult } from './result.ts';

/** Whether a value can be written into the note: it is decided, and the note has nothing there. */
export function isPlaceable(value: DictatedValue, view: NoteView): boolean {
  return value.value !== null && value.state !== 'unresolved' && view.isFree(value.path);
}

/** Edits that write the values of a dictation into a note; what is only proposed carries a mark that asks for confirmation. */
export function placeValues(reading: NoteReading, values: readonly DictatedValue[]): readonly Edit[] {
  const view = new NoteView(reading);
  return insertValues(reading, additionsFor(values.filter((value) => isPlaceable(value, view))));
}

function additionsFor(values: readonly DictatedValue[]): readonly Addition[] {
  const free = values.filter(({ path }) => path[0] === 'free-text');
  const others = values
    .filter(({ path }) => path[0] !== 'free-text')
    .map((value) => addition(value.path, value.value ?? '', value));
  const [first] = free;
  if (first === undefined) return others;
  return [...others, addition(['free-text'], free.map(({ value }) => value).join(' '), first)];
}

function addition(path: Path, value: string, { state, text }: DictatedValue): Addition {
  const as = valuePlanAt(path)?.notation.name === 'identifier' ? 'identifier' : 'value';
  return { path, value, as, words: text, ...(state === 'proposed' && { proposedFrom: 'dictation' as const }) };
}

/** A note made or completed from a dictation, with what the dictation says. */
export interface DictatedNote {
  readonly text: string;
  readonly result: DictationResult;
}

const beginning = 'opnote: 1\nrecord: operation\nstatus: draft\n';

/** Writes a dictation and its values into a note, or into a new one. The dictated text stays in the note. */
export function noteFromDictation(dictation: string, note: string = beginning): DictatedNote {
  const before = readNote(note);
  const result = dictate(dictation, before);
  const kept = new NoteView(before).isFree(['dictation']) ? [keptText(dictation)] : [];
  const view = new NoteView(before);
  const placed = result.values.filter((value) => isPlaceable(value, view));
  return { text: applyEdits(note, insertValues(before, [...additionsFor(placed), ...kept])), result };
}

function keptText(dictation: string): Addition {
  return { path: ['dictation'], value: dictation, as: 'block' };
}

/** The text after edits that do not overlap. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let out = '';
  let at = 0;
  for (const { span, text: written } of edits.toSorted(
    (a, b) => a.span.start - b.span.start || a.span.end - b.span.end,
  )) {
    out += text.slice(at, span.start) + written;
    at = Math.max(at, span.end);
  }
  return out + text.slice(at);
}
