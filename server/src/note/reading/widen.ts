import type { Span } from '@sideport/schemas';

/** A span is never empty: it takes the character behind it, or the one before at the end of the text. */
export function widen(text: string, span: Span): Span {
  const start = Math.min(Math.max(span.start, 0), text.length);
  const end = Math.min(Math.max(span.end, start), text.length);
  if (end > start || text.length === 0) return { start, end };
  return end < text.length && text[end] !== '\n'
    ? { start, end: end + 1 }
    : { start: Math.max(start - 1, 0), end: Math.max(end, 1) };
}
