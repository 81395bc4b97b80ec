import type { Span } from '@sideport/schemas';

/** The line that holds an offset, without its end. Lines end at LF or CRLF, as the reader has it. */
export function lineAt(text: string, offset: number): Span {
  // Before the text there is no line end; asked for one there, the search would find one in its first place.
  const start = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
  const found = text.indexOf('\n', offset);
  const end = found < 0 ? text.length : found;
  return { start, end: end > start && text[end - 1] === '\r' ? end - 1 : end };
}

/** The same line without the byte order mark that a text may begin with: where the first thing on it can stand. */
export function lineBehindMark(text: string, offset: number): Span {
  const { start, end } = lineAt(text, offset);
  return start === 0 && text.startsWith('\uFEFF') ? { start: 1, end: Math.max(end, 1) } : { start, end };
}

/** The column of an offset: UTF-16 units behind the start of its line. A byte order mark takes no column. */
export function columnOf(text: string, offset: number): number {
  return Math.max(0, offset - lineBehindMark(text, offset).start);
}

/** How much deeper what belongs to a field is written. */
export const STEP = 2;

/** The first line behind an offset that is neither blank nor a comment, or undefined at the end. */
export function nextWritten(text: string, offset: number): Span | undefined {
  let at = text.indexOf('\n', offset);
  while (at >= 0) {
    const line = lineAt(text, at + 1);
    if (!/^\s*(?:#|$)/u.test(text.slice(line.start, line.end))) return line;
    at = text.indexOf('\n', line.end);
  }
  return undefined;
}

/** How the text ends its lines; what is inserted follows it. */
export function lineEnding(text: string): '\n' | '\r\n' {
  const found = text.indexOf('\n');
  return found > 0 && text[found - 1] === '\r' ? '\r\n' : '\n';
}
