import type { NoteReading } from '../reading/note-reading.ts';

/** The dictation that a note keeps, and where each of its characters stands in the note. */
export interface KeptDictation {
  readonly text: string;
  /** The offset in the note of a character of the dictation; of its end for the offset behind the last. */
  readonly offsetAt: (offset: number) => number;
}

/** The dictation in a note, or undefined where there is none. */
export function keptDictation(reading: NoteReading): KeptDictation | undefined {
  const found = reading.values.find(({ field }) => field.path.length === 1 && field.path[0] === 'dictation');
  if (found === undefined) return undefined;
  const { text, span } = found.field;
  const offsets = alignment(text, reading.text, span.start, span.end, found.style === 'double');
  return { text, offsetAt: (offset) => offsets[Math.min(Math.max(offset, 0), text.length)] ?? span.end };
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
  const last = offsets.at(-1);
  return [...offsets, last === undefined ? start : last + 1];
}

/** Behind the mark of a block: "|-" or ">-" and the rest of its line. */
function afterHeader(source: string, start: number, end: number): number {
  if (source[start] !== '|' && source[start] !== '>') return start;
  const line = source.indexOf('\n', start);
  return line < 0 || line >= end ? start : line + 1;
}
