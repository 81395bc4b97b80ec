import type { Edit } from '../remark.ts';
import type { TreeNode } from '../reading/tree.ts';
import { lineAt } from './lines.ts';
import { BETWEEN } from './marks.ts';
import type { Editable } from './replace-value.ts';

/**
 * Puts a mark at the end of the line that holds an offset, before what its comment says already. Undefined where the line
 * ends within a text, which the mark would become a part of.
 */
export function markedBehind({ text, tree }: Editable, offset: number, mark: string): readonly Edit[] | undefined {
  const line = lineAt(text, offset);
  const comment = tree.comments.find(({ span }) => span.start >= offset && span.end <= line.end);
  if (comment !== undefined) {
    const start = comment.span.start + 1;
    const blank = /^\s/u.test(text.slice(start)) ? '' : ' ';
    return [{ span: { start, end: start }, text: ` ${mark}${BETWEEN.trimEnd()}${blank}` }];
  }
  if (tree.root !== null && isWithinScalar(tree.root, line.end)) return undefined;
  return [{ span: { start: line.end, end: line.end }, text: ` # ${mark}` }];
}

function isWithinScalar(node: TreeNode, offset: number): boolean {
  if (node.span.start >= offset || node.span.end <= offset) return false;
  if (node.kind === 'scalar') return true;
  const below = node.kind === 'list' ? node.items : node.entries.map(({ value }) => value);
  return below.some((child) => child !== null && isWithinScalar(child, offset));
}

/** Edits in the order of the text; what is written at the same place, as one. */
export function joined(edits: readonly Edit[]): readonly Edit[] {
  const out: Edit[] = [];
  for (const edit of edits.toSorted((a, b) => a.span.start - b.span.start || a.span.end - b.span.end)) {
    const last = out.at(-1);
    if (last !== undefined && last.span.start === edit.span.start && last.span.end === edit.span.start)
      out[out.length - 1] = { span: edit.span, text: last.text + edit.text };
    else out.push(edit);
  }
  return out;
}
