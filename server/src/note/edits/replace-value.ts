import type { Span } from '@sideport/schemas';
import type { Tree, TreeNode } from '../reading/tree.ts';
import type { Edit } from '../remark.ts';
import { lineAt } from './lines.ts';
import { yamlText, type Writing } from './yaml-text.ts';

/** What has to be known of a note to edit it: its text, and where in it what stands. */
export interface Editable {
  readonly text: string;
  readonly tree: Tree;
}

/**
 * Edits that put another text in the place of a value, in quotes where it needs them there. The line end behind a block
 * of lines and a comment beside its mark stay.
 */
export function replaceValue(note: Editable, span: Span, value: string, as?: Writing['as']): readonly Edit[] {
  return replaceWritten(note.text, span, yamlText(value, { ...(as && { as }), inBrackets: isInBrackets(note, span) }));
}

/** The same with a text that is written as YAML has it. */
export function replaceWritten(text: string, span: Span, written: string): readonly Edit[] {
  const end = span.start + text.slice(span.start, span.end).trimEnd().length;
  const mark = /^[|>][-+\d]*/u.exec(text.slice(span.start, span.end))?.[0];
  if (mark === undefined) return [{ span: { start: span.start, end }, text: written }];
  const behindMark = span.start + mark.length;
  const header = lineAt(text, behindMark);
  return [
    { span: { start: span.start, end: behindMark }, text: written },
    ...(header.end < end ? [{ span: { start: header.end, end }, text: '' }] : []),
  ];
}

/**
 * Where the colon of a field ends whose value stands behind it on the same line, outside brackets; undefined for every
 * other field: its value cannot make room for lines below.
 */
export function colonBefore(note: Editable, key: Span, value: Span): number | undefined {
  const { text } = note;
  const colon = /^[ \t]*:(?=[ \t]+$)/u.exec(text.slice(key.end, value.start))?.[0];
  const isLine = !/^[|>]|\n/u.test(text.slice(value.start, value.end));
  return colon === undefined || !isLine || isInBrackets(note, value) ? undefined : key.end + colon.length;
}

/** Whether a place lies within brackets or braces. */
export function isInBrackets({ text, tree }: Editable, { start, end }: Span): boolean {
  let node: TreeNode | null | undefined = tree.root;
  while (node && node.kind !== 'scalar') {
    if ('[{'.includes(text[node.span.start] ?? ' ') && node.span.start < start) return true;
    const below: readonly (TreeNode | null)[] =
      node.kind === 'list' ? node.items : node.entries.map(({ value }) => value);
    node = below.find((child) => child !== null && child.span.start <= start && end <= child.span.end);
  }
  return false;
}
