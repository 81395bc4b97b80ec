import type { MapEntry, TreeNode } from '../reading/tree.ts';
import { columnOf, lineAt, lineBehindMark } from './lines.ts';
import { bindsField } from './marks.ts';
import type { Editable } from './replace-value.ts';

/**
 * Where lines can be put below a value or an empty field: behind its comment, and behind the comment lines below it that
 * are indented deeper than the new lines will be, and so belong to it.
 */
export function lineEndBehind(note: Editable, what: TreeNode | MapEntry, column: number): number {
  const { text } = note;
  let { end } = lineAt(text, endOf(note, what));
  for (let next = text.indexOf('\n', end); next >= 0; next = text.indexOf('\n', end)) {
    const line = lineAt(text, next + 1);
    const comment = commentOfLine(note, line.start);
    // What is said of the field below stays right above it.
    if (comment === undefined || columnOf(text, comment.span.start) <= column || bindsField(comment.text)) break;
    ({ end } = line);
  }
  return end;
}

/** Where lines can be put above the first field of a section: above the comments that belong to that field. */
export function aboveFirst(note: Editable, keyStart: number): number {
  const { text } = note;
  const own = lineBehindMark(text, keyStart).start;
  let at = own;
  let binds = false;
  while (at > 0) {
    const line = lineBehindMark(text, at - 1);
    const comment = commentOfLine(note, line.start);
    if (comment === undefined || line.start === at) break;
    binds ||= bindsField(comment.text);
    at = line.start;
  }
  // A note's own heading stays its first line.
  return binds || columnOf(text, keyStart) > 0 ? at : own;
}

function commentOfLine({ text, tree }: Editable, lineStart: number) {
  const line = lineBehindMark(text, lineStart);
  return tree.comments.find(
    ({ span }) => span.start >= line.start && span.end <= line.end && text.slice(line.start, span.start).trim() === '',
  );
}

/** The end of what is written, without the blank lines behind it, unless they are a part of the text. */
function endOf({ text }: Editable, what: TreeNode | MapEntry): number {
  if (!('kind' in what)) return what.keySpan.end;
  const last = lastScalar(what);
  if (last !== undefined && /^[|>]\d?\+/u.test(text.slice(last.start, last.start + 3)))
    return last.end > last.start && text[last.end - 1] === '\n' ? last.end - 1 : last.end;
  return what.span.start + text.slice(what.span.start, what.span.end).trimEnd().length;
}

function lastScalar(node: TreeNode) {
  let at: TreeNode | null | undefined = node;
  while (at && at.kind !== 'scalar') at = at.kind === 'list' ? at.items.at(-1) : at.entries.at(-1)?.value;
  return at?.span;
}
