import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';

/** A comment that marks the line it stands behind. */
export interface Mark {
  readonly span: Span;
  readonly line: Span;
}

/** Comments that begin with a mark, with the line they stand on. */
export function marksOf({ tree, text }: NoteReading, shape: RegExp): Mark[] {
  return tree.comments
    .filter((comment) => shape.test(comment.text))
    .map(({ span }) => ({ span, line: { start: text.lastIndexOf('\n', span.start - 1) + 1, end: span.end } }));
}

/** What a mark stands behind, shortened. */
export function markedText({ text }: NoteReading, { span, line }: Mark): string {
  const before = text.slice(line.start, span.start).trim().replace(/^- /u, '');
  return before.length > 60 ? `${before.slice(0, 59)}…` : before;
}
