import type { GroupPlan, Place, ValuePlan } from '@sideport/schemas';
import type { Fix } from '../remark.ts';
import type { ScalarNode } from './tree.ts';

/** What a person most probably meant by a value of the wrong shape: in words, and as an edit. */
export interface LikelyMeant {
  readonly hint: string;
  readonly fixes: readonly Fix[];
}

const SEPARATORS = /\s*(?:[,;+&]|\band\b)\s*/u;

/** Several values of a list on one line without brackets: “topical, intracameral”. */
export function severalValues(item: ValuePlan, node: ScalarNode): LikelyMeant | undefined {
  if (node.style !== 'plain' || item.notation.read(node.text).ok) return undefined;
  const parts = node.text.split(SEPARATORS).filter((part) => part !== '');
  if (parts.length < 2 || !parts.every((part) => item.notation.read(part).ok)) return undefined;
  const written = `[${parts.join(', ')}]`;
  return {
    hint: `Several values stand in brackets: ${written}.`,
    fixes: [{ title: `Write ${written}`, safety: 'safe', edits: [{ span: node.span, text: written }] }],
  };
}

/** “none” or “no” behind a section that says so in its own field `used`. */
export function notUsed(plan: GroupPlan, node: ScalarNode, place: Place, text: string): LikelyMeant | undefined {
  if (!plan.fields.has('used') || !/^(?:no|none|nil|not (?:used|done)|false)$/iu.test(node.text.trim()))
    return undefined;
  const key = place.key ?? place.span;
  const indent = ' '.repeat(key.start - (text.lastIndexOf('\n', key.start - 1) + 1) + 2);
  return {
    hint: 'If there was none, write “used: no” on a line of its own below it.',
    fixes: [
      {
        title: 'Write “used: no” below it',
        safety: 'safe',
        edits: [{ span: { start: key.end, end: node.span.end }, text: `:\n${indent}used: no` }],
      },
    ],
  };
}

const QUOTED = /^[“”„‟«»‘’](?<inside>.*)[“”„‟«»‘’]$/su;

/** The text inside typographic quotes, which are part of a value here: “0040719101”. */
export function insideTypographicQuotes(node: ScalarNode): string | undefined {
  return node.style === 'plain' ? QUOTED.exec(node.text.trim())?.groups?.['inside'] : undefined;
}
