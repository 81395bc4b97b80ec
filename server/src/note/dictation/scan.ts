import { plainWords } from '@sideport/schemas/spoken/plain-words.ts';
import { numbersAt } from './numbers.ts';
import { hesitations, type Found } from './phrases.ts';
import type { SlotReading } from './slots.ts';
import type { Meaning, Table, UnitMeaning } from './table.ts';
import type { Token } from './tokens.ts';

/** A spoken number with the unit that follows it. */
export interface Amount {
  readonly value: number;
  readonly written: string;
  readonly signed: boolean;
  readonly unit: string | undefined;
  readonly adjective: boolean;
}

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
  const best: { readonly weight: number; readonly item: Item | undefined }[] = [];
  best[tokens.length] = { weight: 0, item: undefined };
  for (let from = tokens.length - 1; from >= 0; from -= 1) {
    let choice = { weight: best[from + 1]!.weight, item: undefined as Item | undefined };
    for (const item of itemsAt(tokens, from, table)) {
      const weight = weigh(item, tokens) + best[item.to]!.weight;
      if (weight > choice.weight) choice = { weight, item };
    }
    best[from] = choice;
  }
  const items: Item[] = [];
  for (let at = 0; at < tokens.length;) {
    const item = best[at]!.item;
    if (item !== undefined) items.push(item);
    at = item === undefined ? at + 1 : item.to;
  }
  return items;
}

function itemsAt(tokens: readonly Token[], from: number, table: Table): readonly Item[] {
  const token = tokens[from]!;
  if (token.kind === 'break' || hesitations.has(token.word)) return [];
  const items = table.phrases.at(tokens, from).map((found) => itemOf(found, tokens));
  return [...items, ...amountsAt(tokens, from, table)];
}

function itemOf(found: Found<Meaning>, tokens: readonly Token[]): Item {
  const sure = found.meanings.filter((meaning) => !isHeard(meaning));
  const slotHeard = found.slots.some((slot) => slot.heard);
  return {
    from: found.from,
    to: found.to,
    start: tokens[found.from]!.start,
    end: tokens[found.to - 1]!.end,
    meanings: sure.length > 0 ? sure : found.meanings,
    slots: found.slots,
    heard: sure.length === 0 || slotHeard,
  };
}

function isHeard(meaning: Meaning): boolean {
  return 'heard' in meaning && meaning.heard;
}

/** "One minute and twelve seconds" is one length of time. */
function minutesAndSeconds(item: Item, tokens: readonly Token[], table: Table): readonly Item[] {
  if (item.amount?.unit !== 'min' || !Number.isInteger(item.amount.value)) return [];
  const rest = tokens[item.to]?.word === 'and' ? item.to + 1 : item.to;
  const minutes = item.amount.value;
  return simpleAmountsAt(tokens, rest, table).flatMap((seconds) => {
    const bare = seconds.amount?.unit === undefined;
    if (
      seconds.amount === undefined ||
      seconds.amount.signed ||
      !(bare || seconds.amount.unit === 's') ||
      seconds.amount.value >= 60
    )
      return [];
    const value = minutes * 60 + seconds.amount.value;
    return [
      {
        ...item,
        to: seconds.to,
        end: seconds.end,
        amount: { ...item.amount!, value, written: String(value), unit: 's' },
        heard: item.heard || seconds.heard || bare,
      },
    ];
  });
}

function amountsAt(tokens: readonly Token[], from: number, table: Table): readonly Item[] {
  const simple = simpleAmountsAt(tokens, from, table);
  return [...simple, ...simple.flatMap((item) => minutesAndSeconds(item, tokens, table))];
}

function simpleAmountsAt(tokens: readonly Token[], from: number, table: Table): readonly Item[] {
  return numbersAt(tokens, from).flatMap((number) => {
    const make = (to: number, unit: UnitMeaning | undefined): Item => ({
      from,
      to,
      start: tokens[from]!.start,
      end: tokens[to - 1]!.end,
      meanings: [],
      slots: [],
      amount: {
        value: number.value,
        written: number.written,
        signed: number.signed,
        unit: unit?.unit,
        adjective: unit?.adjective ?? false,
      },
      heard: number.heard || unit?.heard === true,
    });
    const after = number.end;
    const hyphen = tokens[after]?.word === '-' ? after + 1 : after;
    const units = table.units
      .at(tokens, hyphen)
      .map((found) => make(found.to, found.meanings.find(({ heard }) => !heard) ?? found.meanings[0]!));
    return [make(after, undefined), ...units];
  });
}

/** Meanings that carry no fact of their own. */
const fillers: ReadonlySet<Meaning['kind']> = new Set(['plain', 'doubt', 'denial', 'cue']);

/** How much an island explains: longer is better than the sum of its parts, sure better than heard, facts better than fillers. */
function weigh(item: Item, tokens: readonly Token[]): number {
  let length = 0;
  let content = 0;
  for (let at = item.from; at < item.to; at += 1) {
    if (hesitations.has(tokens[at]!.word)) continue;
    length += 1;
    if (!plainWords.has(tokens[at]!.word)) content += 1;
  }
  const size = 4 * content + 6 * length + 2 * length * length;
  if (item.amount !== undefined) return size - (item.heard ? 6 : 1) + (item.amount.unit === undefined ? 0 : 1);
  if (item.heard) return size - 7;
  const kinds = new Set(item.meanings.map(({ kind }) => kind));
  if (kinds.has('value') || kinds.has('form')) return size + 2;
  if ([...kinds].every((kind) => fillers.has(kind))) return 5 * content + length + (length * length) / 2;
  return size;
}
