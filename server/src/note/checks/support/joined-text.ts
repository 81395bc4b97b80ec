import type { Path, Span } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';

/** Some texts of a note in one string, so that a pattern is looked for once and not in every text by itself. */
export interface JoinedText {
  readonly joined: string;
  /** The same in small letters, for a first quick look. */
  readonly small: string;
  /** The text that holds a place of the joined one, and the place in the note. */
  readonly locate: (index: number, length: number) => (Located & { readonly span: Span }) | undefined;
}

export interface Located {
  readonly path: Path;
  readonly where: string;
}

interface Piece extends Located {
  readonly start: number;
  readonly at: number;
}

/** Nothing matches across it. */
const BETWEEN = '\n\u0000\n';

export interface TextToJoin extends Located {
  readonly span: Span;
}

/**
 * A pattern to be looked for, with a first quick look: small words of which one must be there, or a cheaper pattern
 * over small letters. Most texts need no closer look.
 */
export interface Wording {
  readonly hints: readonly string[] | RegExp;
  /** With the flag “g”. */
  readonly pattern: RegExp;
}

export function joinTexts({ text }: NoteReading, texts: readonly TextToJoin[]): JoinedText {
  const pieces: Piece[] = [];
  let joined = '';
  for (const { span, path, where } of texts) {
    pieces.push({ start: span.start, path, where, at: joined.length });
    joined += `${text.slice(span.start, span.end)}${BETWEEN}`;
  }
  return {
    joined,
    small: joined.toLowerCase(),
    locate: (index, length) => {
      const piece = pieces.findLast(({ at }) => at <= index);
      if (piece === undefined) return undefined;
      const start = piece.start + (index - piece.at);
      return { path: piece.path, where: piece.where, span: { start, end: start + length } };
    },
  };
}

/** Every place of a wording; nothing, and quickly, where the first look finds nothing. */
export function matchesOf({ joined, small }: JoinedText, { hints, pattern }: Wording): Iterable<RegExpExecArray> {
  const isHinted = hints instanceof RegExp ? hints.test(small) : hints.some((hint) => small.includes(hint));
  return isHinted ? joined.matchAll(pattern) : [];
}
