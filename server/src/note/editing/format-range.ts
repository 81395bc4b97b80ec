import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import { readNote } from '../reading/read-note.ts';
import type { TreeNode } from '../reading/tree.ts';
import type { Edit } from '../remark.ts';
import { formatNote } from './format.ts';

/**
 * The edits that tidy a part of a note. A line whose column only makes sense together with lines outside of the part
 * stays in its column: moved alone it could not be read, or would belong to another section.
 */
export function formatRange(reading: NoteReading, { start, end }: Span): readonly Edit[] {
  const within = formatNote(reading).filter(({ span }) => span.start >= start && span.end <= end);
  if (saysTheSame(reading, within)) return within;
  const inColumns = within.filter((edit) => !movesLine(reading.text, edit));
  return saysTheSame(reading, inColumns) ? inColumns : [];
}

function movesLine(text: string, { span }: Edit): boolean {
  const lineStart = text.lastIndexOf('\n', span.start - 1) + 1;
  return text.slice(lineStart, span.end).trim() === '' && /\S/u.test(text[span.end] ?? '');
}

/** Whether the note with the edits can be read throughout, and has the same fields in the same places. */
function saysTheSame(reading: NoteReading, edits: readonly Edit[]): boolean {
  const text = edits.reduceRight(
    (before, { span, text: written }) => before.slice(0, span.start) + written + before.slice(span.end),
    reading.text,
  );
  const after = readNote(text, reading.kind === 'department' ? reading.kind : undefined);
  return (
    after.tree.faults.length === 0 &&
    JSON.stringify(shape(after.tree.root)) === JSON.stringify(shape(reading.tree.root))
  );
}

/** Which fields stand in which sections and lists, without their values. */
function shape(node: TreeNode | null): unknown {
  if (node?.kind === 'map') return node.entries.map(({ key, value }) => [key, shape(value)]);
  return node?.kind === 'list' ? { list: node.items.map(shape) } : node?.kind;
}
