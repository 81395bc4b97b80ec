import { plainWords } from '@sideport/schemas/spoken/plain-words.ts';
import { hesitations, type Found } from './phrases.ts';
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
  const chosen: (Found<Meaning> | Item)[] = [];
  best[tokens.length] = 0;
  for (let from = tokens.length - 1; from >= 0; from -= 1) {
    const token = tokens[from]!;
    let most = best[from + 1]!;
    if (token.kind !== 'break' && !hesitations.has(token.word)) {
      for (const found of table.phrases.at(tokens, from, readSlot)) {
        const weight = weights.ofPhrase(found) + best[found.to]!;
        if (weight <= most) continue;
        most = weight;
        chosen[from] = found;
      }
      for (const item of amountsAt(tokens, from, table)) {
        const weight = weights.ofAmount(item) + best[item.to]!;
        if (weight <= most) continue;
        most = weight;
        chosen[from] = item;
      }
    }
    best[from] = most;
  }
  const items: Item[] = [];
  for (let at = 0; at < tokens.length; at = chosen[at]?.to ?? at + 1) {
    const one = chosen[at];
    if (one !== undefined) items.push('heard' in one ? one : itemOf(one, tokens));
  }
  return items;
}

function itemOf(found: Found<Meaning>, tokens: readonly Token[]): Item {
  const { sure } = judge(found.meanings);
  return {
    from: found.from,
    to: found.to,
    start: tokens[found.from]!.start,
    end: tokens[found.to - 1]!.end,
    meanings: sure.length > 0 ? sure : found.meanings,
    slots: found.slots,
    heard: isHeard(found),
  };
}

function isHeard({ meanings, slots }: Found<Meaning>): boolean {
  return judge(meanings).sure.length === 0 || slots.some((slot) => slot.heard);
}

/** What a set of meanings amounts to. */
interface Judged {
  /** Those that are more than a sound. */
  readonly sure: readonly Meaning[];
  readonly valued: boolean;
  readonly filler: boolean;
}

/** The same phrase has the same meanings each time: they are judged once. */
const judged = new WeakMap<readonly Meaning[], Judged>();

function judge(meanings: readonly Meaning[]): Judged {
  const known = judged.get(meanings);
  if (known !== undefined) return known;
  const sure = meanings.filter((meaning) => !('heard' in meaning && meaning.heard));
  const made: Judged = {
    sure,
    valued: sure.some(({ kind }) => kind === 'value' || kind === 'form'),
    filler: sure.every(({ kind }) => fillers.has(kind)),
  };
  judged.set(meanings, made);
  return made;
}

/** Meanings that carry no fact of their own. */
const fillers: ReadonlySet<Meaning['kind']> = new Set(['plain', 'doubt', 'denial', 'cue', 'elsewhere']);

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

  ofPhrase(found: Found<Meaning>): number {
    const { length, content, size } = this.#measure(found);
    if (isHeard(found)) return size - 7;
    const { valued, filler } = judge(found.meanings);
    if (valued) return size + 2;
    return filler && found.slots.length === 0 ? 5 * content + length + (length * length) / 2 : size;
  }

  ofAmount(item: Item): number {
    return this.#measure(item).size - (item.heard ? 6 : 1) + (item.amount?.unit === undefined ? 0 : 1);
  }

  #measure({ from, to }: { readonly from: number; readonly to: number }): {
    readonly length: number;
    readonly content: number;
    readonly size: number;
  } {
    const length = this.#words[to]! - this.#words[from]!;
    const content = this.#content[to]! - this.#content[from]!;
    return { length, content, size: 4 * content + 6 * length + 2 * length * length };
  }
}
