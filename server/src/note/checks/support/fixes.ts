import type { Field, Span } from '@sideport/schemas';
import { insertAll } from '../../edits/insert-values.ts';
import { withoutComment, withoutProposal } from '../../edits/remove-comment.ts';
import { replaceValue, type Editable } from '../../edits/replace-value.ts';
import type { NoteReading } from '../../reading/note-reading.ts';
import type { Fix } from '../../remark.ts';

/** Puts another text in the place of a value. */
export function replacing(note: Editable, span: Span, text: string): Fix {
  return { title: `Write “${text}”`, safety: 'needs-review', edits: replaceValue(note, span, text) };
}

/** Puts another text in the place of a part of a value; nothing where the value is not written as it reads. */
export function replacingPart(
  { text }: Editable,
  { span, text: read }: Field<unknown>,
  part: { readonly index: number; readonly length: number },
  written: string,
): Fix[] {
  if (text.slice(span.start, span.end) !== read) return [];
  const start = span.start + part.index;
  const edits = [{ span: { start, end: start + part.length }, text: written }];
  return [{ title: `Write “${written}”`, safety: 'safe', edits }];
}

/** Takes a comment away, or a part of one; of a comment that begins with the mark of a proposal, that mark. */
export function deletingComment({ text }: Editable, span: Span, title: string, safety: Fix['safety']): Fix {
  const words = text.slice(span.start + 1, span.end).trim();
  const edit = text[span.start] === '#' ? withoutProposal(text, { span, text: words }) : withoutComment(text, span);
  return { title, safety, edits: [edit] };
}

/** Adds a field at the top level, where it belongs in the order of an operation. */
export function addingField(reading: NoteReading, key: string, value: string): Fix[] {
  const edits = insertAll(reading, [{ path: [key], value, as: 'value' }]);
  return edits.length === 0 ? [] : [{ title: `Write “${key}: ${value}”`, safety: 'needs-review', edits }];
}
