import { plainWords } from '@sideport/schemas/spoken/plain-words.ts';
import { hesitations, type Found, type ReadSlot } from './phrases.ts';
import { slotReader, type SlotReading } from './slots.ts';
import { amountsAt, type Amount } from './spoken-amounts.ts';
import type { Meaning, Table } from './table.ts';
import type { Token } from './tokens.ts';

/** An island of the dictation that is understood. */
export interface Item {
  /** Token positions; `to` is the position after the last. */
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
  readonly meanings: readonly Meaning[];
  readonly slots: readonly SlotReading[];
  readonly amount?: Amount;
  /** Only sounds like it. */
  readonly heard: boolean;
  /** Sounds like it, and the words are declared nowhere. */
  readonly guessed?: boolean;
}

/** The islands that together explain the most of a dictation, in order; they never overlap. */
export function scan(tokens: readonly Token[], table: Table): readonly Item[] {
  const readSlot = slotReader(tokens);
  const weights = new Weights(tokens);
  const best: number[] = [];
  const chosen: (Item | undefined)[] = [];
  best[tokens.length] = 0;
  for (let from = tokens.length - 1; from >= 0; from -= 1) {
    best[from] = best[from + 1]!;
    for (const item of itemsAt(tokens, from, table, readSlot)) {
      const weight = weights.of(item) + best[item.to]!;
      if (weight <= best[from]!) continue;
      best[from] = weight;
      chosen[from] = item;
    }
  }
  const items: Item[] = [];
  for (let at = 0; at < tokens.length;) {
    const item = chosen[at];
    if (item !== undefined) items.push(item);
    at = item === undefined ? at + 1 : item.to;
  }
  return items;
}

function itemsAt(tokens: readonly Token[], from: number, table: Table, readSlot: ReadSlot): readonly Item[] {
  const token = tokens[from]!;
  if (token.kind === 'break' || hesitations.has(token.word)) return [];
  const items = table.phrases.at(tokens, from, readSlot).map((found) => itemOf(found, tokens));
  return [...items, ...amountsAt(tokens, from, table)];
}

function itemOf(found: Found<Meaning>, tokens: readonly Token[]): Item {
  const sure = found.meanings.filter((meaning) => !isHeard(meaning));
  return {
    from: found.from,
    to: found.to,
    start: tokens[found.from]!.start,
    end: tokens[found.to - 1]!.end,
    meanings: sure.length > 0 ? sure : found.meanings,
    slots: found.slots,
    heard: sure.length === 0 || found.slots.some((slot) => slot.heard),
  };
}

function isHeard(meaning: Meaning): boolean {
  return 'heard' in meaning && meaning.heard;
}

/** Meanings that carry no fact of their own. */
const fillers: ReadonlySet<Meaning['kind']> = new Set(['plain', 'doubt', 'denial', 'cue']);

/** How much an island explains: longer is better than the sum of its parts, sure better than heard, facts better than fillers. */
class Weights {
  /** Words, and words that are not plain, before each token. */
  readonly #words: number[] = [0];
  readonly #content: number[] = [0];

  constructor(tokens: readonly Token[]) {
    tokens.forEach(({ word }, at) => {
      const counts = !hesitations.has(word);
      this.#words.push(this.#words[at]! + (counts ? 1 : 0));
      this.#content.push(this.#content[at]! + (counts && !plainWords.has(word) ? 1 : 0));
    });
  }

  of({ from, to, amount, heard, meanings }: Item): number {
    const length = this.#words[to]! - this.#words[from]!;
    const content = this.#content[to]! - this.#content[from]!;
    const size = 4 * content + 6 * length + 2 * length * length;
    if (amount !== undefined) return size - (heard ? 6 : 1) + (amount.unit === undefined ? 0 : 1);
    if (heard) return size - 7;
    if (meanings.some(({ kind }) => kind === 'value' || kind === 'form')) return size + 2;
    if (meanings.every(({ kind }) => fillers.has(kind))) return 5 * content + length + (length * length) / 2;
    return size;
  }
}
