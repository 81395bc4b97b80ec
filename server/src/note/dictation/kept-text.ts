import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';

/** The dictation that a note keeps, and where its words stand in the note. */
export interface KeptDictation {
  readonly text: string;
  /** The place in the note of a stretch of the dictation, from its first to its last character. */
  readonly spanOf: (stretch: Span) => Span;
}

/** The dictation in a note, or undefined where there is none. */
export function keptDictation(reading: NoteReading): KeptDictation | undefined {
  const found = reading.values.find(({ field }) => field.path.length === 1 && field.path[0] === 'dictation');
  if (found === undefined) return undefined;
  const { text, span } = found.field;
  const offsets = alignment(text, reading.text, span.start, span.end, found.style === 'double');
  const at = (offset: number): number => offsets[Math.min(Math.max(offset, 0), text.length - 1)] ?? span.start;
  return { text, spanOf: ({ start, end }) => ({ start: at(start), end: at(Math.max(start, end - 1)) + 1 }) };
}

/**
 * Where each character of a text stands in its source. Blocks and quotes only add blanks, marks and line ends, so
 * that the characters of the text follow each other in the source as they do in the text.
 */
function alignment(text: string, source: string, start: number, end: number, escaped: boolean): readonly number[] {
  const offsets: number[] = [];
  let at = afterHeader(source, start, end);
  for (const unit of text.split('')) {
    const blank = /\s/u.test(unit);
    if (!blank)
      while (at < end && source[at] !== unit) at += escaped && source[at] === '\\' && source[at + 1] !== unit ? 2 : 1;
    offsets.push(Math.min(at, Math.max(start, end - 1)));
    if (!blank || (at < end && source[at] === unit)) at += 1;
  }
  return offsets;
}

/** Behind the mark of a block: "|-" or ">-" and the rest of its line. */
function afterHeader(source: string, start: number, end: number): number {
  if (source[start] !== '|' && source[start] !== '>') return start;
  const line = source.indexOf('\n', start);
  return line < 0 || line >= end ? start : line + 1;
}
