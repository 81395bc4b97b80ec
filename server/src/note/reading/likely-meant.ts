import type { GroupPlan, Place, ValuePlan } from '@sideport/schemas';
import { columnOf, lineEnding, STEP } from '../edits/lines.ts';
import { colonBefore, replaceWritten, type Editable } from '../edits/replace-value.ts';
import type { Fix } from '../remark.ts';
import type { ScalarNode, TreeNode } from './tree.ts';

/** What a person most probably meant by a value of the wrong shape: in words, and as an edit. */
export interface LikelyMeant {
  readonly hint: string;
  readonly fixes: readonly Fix[];
}

const SEPARATORS = /\s*(?:[,;+&]|\band\b)\s*/u;

/** Several values of a list on one line without brackets: “topical, intracameral”. */
export function severalValues(item: ValuePlan, node: ScalarNode, { text }: Editable): LikelyMeant | undefined {
  if (node.style !== 'plain' || item.notation.read(node.text).ok) return undefined;
  const parts = node.text.split(SEPARATORS).filter((part) => part !== '');
  if (parts.length < 2 || !parts.every((part) => item.notation.read(part).ok)) return undefined;
  const written = `[${parts.join(', ')}]`;
  return {
    hint: `Several values stand in brackets: ${written}.`,
    fixes: [{ title: `Write ${written}`, safety: 'safe', edits: replaceWritten(text, node.span, written) }],
  };
}

/** “none” or “no” behind a section that says so in its own field `used`. */
export function notUsed(plan: GroupPlan, node: ScalarNode, place: Place, note: Editable): LikelyMeant | undefined {
  if (!plan.fields.has('used') || !/^(?:no|none|nil|not (?:used|done)|false)$/iu.test(node.text.trim()))
    return undefined;
  return {
    hint: 'If there was none, write “used: no” on a line of its own below it.',
    fixes: usedNo(node, place, note),
  };
}

/** Only where the word stands behind its key; a comment goes with it. */
function usedNo({ span }: ScalarNode, { key }: Place, note: Editable): readonly Fix[] {
  const start = key === null ? undefined : colonBefore(note, key, span);
  if (key === null || start === undefined) return [];
  const indent = ' '.repeat(columnOf(note.text, key.start) + STEP);
  const edits = [{ span: { start, end: span.end }, text: `${lineEnding(note.text)}${indent}used: no` }];
  return [{ title: 'Write “used: no” below it', safety: 'safe', edits }];
}

/** A text on one line that holds “: ” and was taken for a field: “late dislocation: second operation”. */
export function textWithColon(plan: ValuePlan, node: TreeNode, text: string): LikelyMeant | undefined {
  if (plan.guide.prose !== true || node.kind !== 'map') return undefined;
  const [entry, ...others] = node.entries;
  const written = text.slice(node.span.start, node.span.end);
  if (entry?.value?.kind !== 'scalar' || others.length > 0 || /\n|^\{/u.test(written)) return undefined;
  const quoted = /["\\]/u.test(written) ? `'${written.replaceAll("'", "''")}'` : `"${written}"`;
  return {
    hint: `This one holds “: ”, which begins a field. Put it in quotes: ${quoted}.`,
    fixes: [{ title: `Write ${quoted}`, safety: 'safe', edits: [{ span: node.span, text: quoted }] }],
  };
}

const QUOTED = /^[“”„‟«»‘’](?<inside>.*)[“”„‟«»‘’]$/su;

/** The text inside typographic quotes, which are part of a value here: “0040719101”. */
export function insideTypographicQuotes(node: ScalarNode): string | undefined {
  return node.style === 'plain' ? QUOTED.exec(node.text.trim())?.groups?.['inside'] : undefined;
}
