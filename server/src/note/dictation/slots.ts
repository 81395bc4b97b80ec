import type { SlotName } from '@sideport/schemas/spoken/phrase.ts';
import { canBeginDate, dateAt } from './dates.ts';
import { sure, type Held, type Reader } from './held.ts';
import { numbersAt } from './numbers.ts';
import { placeWords, readPlace } from './slot-places.ts';
import { readClock, readDuration, readFrequency, readMinutes, timeWords } from './slot-times.ts';
import { wordAt, type Token } from './tokens.ts';
import { belowHundred, digitOf } from './whole-numbers.ts';

/** What a slot holds, with where it begins. */
export interface SlotReading extends Held {
  readonly from: number;
}

const readers: Readonly<Record<SlotName, Reader>> = {
  number: (tokens, at) => numbersAt(tokens, at).map(({ written, end, heard }) => ({ text: written, end, heard })),
  count: readCount,
  pair: readPair,
  gauge: readGauge,
  date: (tokens, at) => {
    const date = dateAt(tokens, at);
    return date === undefined ? [] : [{ text: date.text, end: date.end, heard: date.unsure }];
  },
  serial: readSerial,
  duration: readDuration,
  frequency: readFrequency,
  clock: readClock,
  minutes: readMinutes,
  place: readPlace,
};

/** Every way to fill a slot from a token on. */
export function readSlot(slot: SlotName, tokens: readonly Token[], at: number): readonly SlotReading[] {
  const found = readers[slot](tokens, at);
  return found.length === 0 ? nothing : found.map(({ text, end, heard }) => ({ text, from: at, end, heard }));
}

const nothing: readonly SlotReading[] = [];

/** Reads the slots of one dictation, each place once. */
export function slotReader(tokens: readonly Token[]): (slot: SlotName, at: number) => readonly SlotReading[] {
  const known = new Map<SlotName, (readonly SlotReading[])[]>();
  const mayBegin = tokens.map(canBeginSlot);
  return (slot, at) => {
    if (mayBegin[at] !== true) return nothing;
    let places = known.get(slot);
    if (places === undefined) known.set(slot, (places = []));
    return (places[at] ??= readSlot(slot, tokens, at));
  };
}

/** Whether anything that a slot holds can begin with a token. Most words begin none, and there are many words. */
function canBeginSlot(token: Token): boolean {
  return canBeginDate(token) || token.word.length === 1 || slotWords.has(token.word);
}

const articles: Readonly<Record<string, string>> = { a: '1', an: '1', single: '1', pair: '2', couple: '2', both: '2' };

/** A number of things, up to twenty. */
function readCount(tokens: readonly Token[], at: number): readonly Held[] {
  const first = wordAt(tokens, at) ?? '';
  if (first === 'a' && ['single', 'pair', 'couple'].includes(wordAt(tokens, at + 1) ?? ''))
    return readCount(tokens, at + 1);
  if ((first === 'pair' || first === 'couple') && wordAt(tokens, at + 1) === 'of') return [sure('2', at + 2)];
  // “Nine nought” is a gauge.
  if (digitOf(first) === 0 && digitOf(wordAt(tokens, at - 1)) !== undefined) return [];
  const article = articles[first];
  if (article !== undefined) return [sure(article, at + 1)];
  return numbersAt(tokens, at)
    .filter(({ value, signed, written }) => !signed && value <= 20 && !written.includes('.'))
    .map(({ written, end, heard }) => ({ text: written, end, heard }));
}

/** Two diameters: "twelve fourteen", "13/11", "thirteen by eleven". */
function readPair(tokens: readonly Token[], at: number): readonly Held[] {
  const first = diameter(tokens, at);
  if (first === undefined) return [];
  let between = unitEnd(tokens, first.end);
  if (['/', '-', 'by', 'over', 'x', 'slash', 'stroke'].includes(wordAt(tokens, between) ?? '')) between += 1;
  const second = diameter(tokens, between);
  return second === undefined ? [] : [sure(`${first.text}/${second.text}`, unitEnd(tokens, second.end))];
}

function unitEnd(tokens: readonly Token[], at: number): number {
  return ['mm', 'millimetre', 'millimetres'].includes(wordAt(tokens, at) ?? '') ? at + 1 : at;
}

function diameter(tokens: readonly Token[], at: number): { readonly text: string; readonly end: number } | undefined {
  const found = numbersAt(tokens, at).find(({ value, signed }) => !signed && value >= 8 && value <= 16);
  return found === undefined ? undefined : { text: found.written, end: found.end };
}

/** A suture's gauge: "ten oh", "ten zero", "10-0", "10/0". */
function readGauge(tokens: readonly Token[], at: number): readonly Held[] {
  const size = belowHundred(tokens, at).at(0)?.value ?? (tokens[at]?.kind === 'number' ? Number(tokens[at].word) : 0);
  if (!Number.isInteger(size) || size < 6 || size > 11) return [];
  const zero = ['-', '/'].includes(wordAt(tokens, at + 1) ?? '') ? at + 2 : at + 1;
  const isZero = digitOf(wordAt(tokens, zero)) === 0 || (tokens[zero]?.kind === 'number' && tokens[zero].word === '0');
  return isZero ? [sure(`${size}-0`, zero + 1)] : [];
}

const repeats: Readonly<Record<string, number>> = { double: 2, triple: 3 };

/** Digits and letters spoken one by one, with pauses; ends where something else begins. */
function readSerial(tokens: readonly Token[], at: number): readonly Held[] {
  let text = '';
  let end = at;
  for (let next = at; next < tokens.length;) {
    const token = tokens[next]!;
    const pause = token.strength === 'part' || token.word === '-' || token.word === '/';
    if (pause && text !== '' && serialPiece(tokens, next + 1) !== undefined) {
      next += 1;
      continue;
    }
    const read = serialPiece(tokens, next);
    if (read === undefined) break;
    text += read.text;
    next = read.end;
    end = next;
  }
  return text.length >= 3 && /\d/u.test(text) ? [sure(text, end)] : [];
}

function serialPiece(
  tokens: readonly Token[],
  at: number,
): { readonly text: string; readonly end: number } | undefined {
  const token = tokens[at];
  if (token === undefined || token.kind === 'break') return undefined;
  if (token.kind === 'number')
    return measured(tokens, at + 1) || token.word.includes('.') ? undefined : { text: token.word, end: at + 1 };
  const times = repeats[token.word];
  const digit = digitOf(times === undefined ? token.word : wordAt(tokens, at + 1));
  if (digit !== undefined) {
    const end = times === undefined ? at + 1 : at + 2;
    return measured(tokens, end) ? undefined : { text: String(digit).repeat(times ?? 1), end };
  }
  const small = belowHundred(tokens, at).at(-1);
  if (small !== undefined)
    return measured(tokens, small.end) ? undefined : { text: String(small.value), end: small.end };
  return /^[b-z]$/u.test(token.word) ? { text: token.word.toUpperCase(), end: at + 1 } : undefined;
}

/** Whether a unit or a decimal point follows, so that the number before it is a measurement. */
function measured(tokens: readonly Token[], at: number): boolean {
  return [
    'point',
    'and',
    'dioptre',
    'dioptres',
    'd',
    'mm',
    'millimetre',
    'millimetres',
    'degrees',
    'percent',
    'hundred',
    'mg',
    'ml',
  ].includes(wordAt(tokens, at) ?? '');
}

/** Words other than numbers and dates that a slot can begin with. */
const slotWords: ReadonlySet<string> = new Set([
  ...Object.keys(articles),
  ...Object.keys(repeats),
  ...timeWords,
  ...placeWords,
  'oh',
  'o',
]);
