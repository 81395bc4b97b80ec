import { plainWords } from '@sideport/schemas/spoken/plain-words.ts';
import { hesitations } from './phrases.ts';
import type { Item } from './scan.ts';
import type { Token } from './tokens.ts';

/** What stands between two islands. */
export interface Gap {
  /** Words that nothing explains. */
  readonly content: number;
  /** Words that carry no fact. */
  readonly plain: readonly string[];
  readonly parts: number;
  readonly sentences: number;
}

const noGap: Gap = { content: 0, plain: [], parts: 0, sentences: 0 };

/** What stands between two token positions. */
export function gapBetween(tokens: readonly Token[], from: number, to: number): Gap {
  if (from >= to) return noGap;
  const plain: string[] = [];
  let content = 0;
  let parts = 0;
  let sentences = 0;
  for (let at = from; at < to; at += 1) {
    const token = tokens[at]!;
    if (token.strength === 'sentence') sentences += 1;
    else if (token.strength === 'part') parts += 1;
    else if (hesitations.has(token.word)) continue;
    else if (plainWords.has(token.word)) plain.push(token.word);
    else content += 1;
  }
  return { content, plain, parts, sentences };
}

/** Two gaps as one. */
export function joinedGaps(a: Gap, b: Gap): Gap {
  return {
    content: a.content + b.content,
    plain: [...a.plain, ...b.plain],
    parts: a.parts + b.parts,
    sentences: a.sentences + b.sentences,
  };
}

/** Whether an island carries no fact: an aside. */
export function isPlain(item: Item): boolean {
  return item.amount === undefined && item.meanings.every(({ kind }) => kind === 'plain');
}

/** The nearest island before or after another that is no aside, or undefined. */
export function neighbour(items: readonly Item[], index: number, step: 1 | -1): number | undefined {
  for (let at = index + step; at >= 0 && at < items.length; at += step) if (!isPlain(items[at]!)) return at;
  return undefined;
}
