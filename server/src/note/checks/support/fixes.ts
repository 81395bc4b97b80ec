import { recordPlan, type Span } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';
import type { Fix } from '../../remark.ts';

/** Puts another text in the place of a value. */
export function replacing(span: Span, text: string): Fix {
  return { title: `Write “${text}”`, safety: 'needs-review', edits: [{ span, text }] };
}

/** Takes a comment away, with the blanks before it and, when nothing else stands there, its whole line. */
export function deletingComment({ text }: NoteReading, span: Span, title: string, safety: Fix['safety']): Fix {
  const lineStart = text.lastIndexOf('\n', span.start - 1) + 1;
  const alone = text.slice(lineStart, span.start).trim() === '';
  const lineEnd = text.indexOf('\n', span.end);
  if (alone && lineEnd >= 0)
    return { title, safety, edits: [{ span: { start: lineStart, end: lineEnd + 1 }, text: '' }] };
  let start = span.start;
  while (start > lineStart && (text[start - 1] === ' ' || text[start - 1] === '\t')) start -= 1;
  return { title, safety, edits: [{ span: { start, end: span.end }, text: '' }] };
}

/** Adds a field at the top level, where it belongs in the order of an operation. */
export function addingField(reading: NoteReading, key: string, lines: string): Fix[] {
  const { tree, kind, text } = reading;
  if (tree.root?.kind !== 'map' || kind === null) return [];
  const order = [...recordPlan(kind).fields.keys()];
  const before = tree.root.entries.filter((entry) => order.indexOf(entry.key) < order.indexOf(key)).at(-1);
  const last = before?.value?.span.end ?? before?.keySpan.end ?? 0;
  const lineEnd = text.indexOf('\n', Math.max(last - 1, 0));
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const added = lines.replaceAll('\n', newline);
  const [at, written] =
    before === undefined
      ? [0, `${added}${newline}`]
      : lineEnd < 0
        ? [text.length, `${newline}${added}`]
        : [lineEnd + 1, `${added}${newline}`];
  return [
    {
      title: `Write “${lines.replaceAll(/\s*\n\s*/gu, ' ')}”`,
      safety: 'needs-review',
      edits: [{ span: { start: at, end: at }, text: written }],
    },
  ];
}
