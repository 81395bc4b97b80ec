import type { Span } from '@sideport/schemas';
import type { Comment } from './tree.ts';

/** The comments of a text: a # at the start of a line or after a blank, outside every scalar. */
export function findComments(text: string, scalars: readonly Span[]): Comment[] {
  if (!text.includes('#')) return [];
  const comments: Comment[] = [];
  const ordered = scalars.toSorted((a, b) => a.start - b.start);
  let next = 0;
  let at = text.indexOf('#');
  while (at >= 0) {
    while ((ordered[next]?.end ?? Infinity) <= at) next++;
    const scalar = ordered[next];
    if (scalar !== undefined && scalar.start <= at) {
      at = text.indexOf('#', scalar.end);
    } else if (at > 0 && !/\s/u.test(text[at - 1] ?? '')) {
      at = text.indexOf('#', at + 1);
    } else {
      const end = lineEnd(text, at);
      comments.push({ text: text.slice(at + 1, end).trim(), span: { start: at, end } });
      at = text.indexOf('#', end);
    }
  }
  return comments;
}

function lineEnd(text: string, at: number): number {
  const found = text.indexOf('\n', at);
  const end = found < 0 ? text.length : found;
  return text[end - 1] === '\r' ? end - 1 : end;
}
