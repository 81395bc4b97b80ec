import type { Plan } from '@sideport/schemas';
import type { ListNode, MapNode } from '../reading/tree.ts';
import type { Edit } from '../remark.ts';
import { childPlan, type Addition, type Branch } from './additions.ts';
import { lineAt } from './lines.ts';
import { markedBehind } from './marked-lines.ts';
import type { Editable } from './replace-value.ts';
import { inBrackets, inlineList, markOf, valuesOf } from './written-field.ts';

/** Edits that write values behind those of a list in brackets; what would need lines of its own is left out. */
export function insertIntoBrackets(note: Editable, node: ListNode, added: readonly Branch[]): readonly Edit[] {
  const values = valuesOf(added).filter(({ as }) => as !== 'block');
  const last = node.items.at(-1);
  if (values.length === 0 || last === null) return [];
  const place = { end: last?.span.end, open: node.span.start, close: node.span.end - 1 };
  return behindLast(note, place, values.map(inBrackets), values);
}

/** Edits that write fields behind those of a section in braces; what would need lines of its own is left out. */
export function insertIntoBraces(
  note: Editable,
  node: MapNode,
  plan: Plan | undefined,
  missing: ReadonlyMap<string, Branch>,
): readonly Edit[] {
  const fields: string[] = [];
  const values: Addition[] = [];
  for (const [key, child] of missing) {
    const field = childPlan(plan, key);
    if (child.value !== undefined && child.value.as !== 'block') {
      fields.push(`${key}: ${inBrackets(child.value)}`);
      values.push(child.value);
    } else if (field?.kind === 'list' && field.item.kind === 'value' && child.below.size > 0) {
      const entries = [...child.below.values()];
      fields.push(`${key}:${inlineList(entries).inline}`);
      values.push(...valuesOf(entries));
    }
  }
  const last = node.entries.at(-1);
  const place = { end: last?.value?.span.end ?? last?.keySpan.end, open: node.span.start, close: node.span.end - 1 };
  return fields.length === 0 ? [] : behindLast(note, place, fields, values);
}

interface Place {
  /** The end of the last entry; undefined where there is none. */
  readonly end: number | undefined;
  /** Where the brackets stand. */
  readonly open: number;
  readonly close: number;
}

function behindLast(
  note: Editable,
  { end, open, close }: Place,
  written: readonly string[],
  values: readonly Addition[],
): readonly Edit[] {
  const start = end ?? open + 1;
  const between = note.text.slice(start, close);
  const words = between.replace(/(?:^|\s)#.*$/gmu, '');
  // The last field may be empty; anything else that stands there is not understood.
  if (!/^\s*:?\s*,?\s*$/u.test(words)) return [];
  const comma = end === undefined ? '' : words.includes(',') ? ' ' : words.includes(':') ? ' , ' : ', ';
  const at = words === between ? start + between.trimEnd().length : close;
  const mark = markOf(values);
  // A mark at the end of the line speaks of what stands last on it.
  const rest = note.text.slice(at, lineAt(note.text, at).end);
  if (mark !== undefined && !/^[\s,\]}]*(?:\s#.*)?$/u.test(rest)) return [];
  const marked = mark === undefined ? [] : markedBehind(note, at, mark);
  return marked === undefined
    ? []
    : [{ span: { start: at, end: at }, text: `${comma}${written.join(', ')}` }, ...marked];
}
