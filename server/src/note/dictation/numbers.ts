import { wordAt, type Token } from './tokens.ts';
import {
  belowHundred,
  digitOf,
  hundreds,
  integers,
  onlyAfterNumbers,
  pointless,
  soundAlikes,
  wholeNumberWords,
  type Part,
} from './whole-numbers.ts';

const points = new Set(['point', 'dot', 'decimal', 'points']);

/**
 * A number read from the tokens at some place. `written` keeps the decimals that were spoken ("twenty one point
 * zero" is 21.0) and the sign where one was spoken; `end` is the position after its last token.
 */
export interface NumberReading {
  readonly value: number;
  readonly written: string;
  readonly end: number;
  readonly signed: boolean;
  /** Made of a word that only sounds like a number ("for hundred"): never more than a proposal. */
  readonly heard: boolean;
}

const none: readonly NumberReading[] = [];

/** Whether a number can begin with a token. */
export function canBeginNumber({ kind, word }: Token): boolean {
  return kind === 'number' || (kind === 'word' && beginnings.has(word));
}

/** Every word that a number can begin with. */
const beginnings: ReadonlySet<string> = new Set([
  ...wholeNumberWords,
  ...points,
  'half',
  'quarter',
  'plus',
  'positive',
  'minus',
  'negative',
]);

/** Every complete reading of the number that begins at a token, longest first. Never throws; [] where none begins. */
export function numbersAt(tokens: readonly Token[], at: number): readonly NumberReading[] {
  const first = tokens[at];
  if (first === undefined || !canBeginNumber(first)) return none;
  let places = readBefore.get(tokens);
  if (places === undefined) readBefore.set(tokens, (places = []));
  return (places[at] ??= readNumbers(tokens, at));
}

/** Several grammars look for numbers at the same places of one dictation. */
const readBefore = new WeakMap<readonly Token[], (readonly NumberReading[])[]>();

function readNumbers(tokens: readonly Token[], at: number): readonly NumberReading[] {
  const sign = signAt(tokens, at);
  const from = sign === undefined ? at : at + 1;
  const readings = [...digits(tokens, from), ...spoken(tokens, from)].filter(({ end }) => !isBrokenOff(tokens, end));
  const unique = new Map<number, NumberReading>();
  for (const reading of readings) {
    if (unique.has(reading.end)) continue;
    unique.set(reading.end, sign === undefined ? reading : withSign(reading, sign));
  }
  return [...unique.values()].toSorted((a, b) => b.end - a.end);
}

/** "Two point, er, two point four": a number that was begun and not ended is none. */
function isBrokenOff(tokens: readonly Token[], end: number): boolean {
  return points.has(wordAt(tokens, end) ?? '') && tokens[end + 1]?.kind === 'break';
}

function withSign(reading: NumberReading, sign: '+' | '-'): NumberReading {
  const value = sign === '-' && reading.value !== 0 ? -reading.value : reading.value;
  return { ...reading, value, written: `${sign}${reading.written}`, signed: true };
}

function signAt(tokens: readonly Token[], at: number): '+' | '-' | undefined {
  const word = wordAt(tokens, at);
  if (word === 'plus' || word === 'positive') return '+';
  return word === 'minus' || word === 'negative' ? '-' : undefined;
}

function digits(tokens: readonly Token[], at: number): NumberReading[] {
  const token = tokens[at];
  if (token?.kind !== 'number' || !/^\d*(?:\.\d+)?$/u.test(token.word)) return [];
  const written = token.word.startsWith('.') ? `0${token.word}` : token.word;
  const whole: NumberReading = { value: Number(written), written, end: at + 1, signed: false, heard: false };
  const out = [whole];
  const integer = !written.includes('.');
  if (integer) out.unshift(...afterInteger(tokens, { value: whole.value, end: at + 1 }));
  const fraction = tokens[at + 1];
  const joined =
    integer && fraction?.kind === 'number' && fraction.word.startsWith('.') && fraction.start === token.end;
  if (joined) out.unshift(reading(`${written}${fraction.word}`, at + 2));
  if (integer && wordAt(tokens, at + 1) === 'hundred')
    out.unshift(...hundreds(tokens, { value: whole.value, end: at + 1 }).map(plain));
  return out;
}

function spoken(tokens: readonly Token[], at: number): NumberReading[] {
  const out: NumberReading[] = [];
  if (points.has(wordAt(tokens, at) ?? '')) out.push(...decimals(tokens, { value: 0, end: at }));
  out.push(...bareFraction(tokens, at), ...pointless(tokens, at).map(plain));
  for (const integer of integers(tokens, at)) out.push(plain(integer), ...afterInteger(tokens, integer));
  return out;
}

function afterInteger(tokens: readonly Token[], integer: Part): NumberReading[] {
  return [...decimals(tokens, integer), ...andFraction(tokens, integer)];
}

/** "two point seven five", "two point seventy five", "2 point 75": every length that could be meant. */
function decimals(tokens: readonly Token[], integer: Part): NumberReading[] {
  if (!points.has(wordAt(tokens, integer.end) ?? '')) return [];
  const at = integer.end + 1;
  const make = (decimal: string, end: number): NumberReading => ({
    ...reading(`${integer.value}.${decimal}`, end),
    heard: integer.heard === true || wordAt(tokens, integer.end) === 'points',
  });
  const typed = tokens[at];
  if (typed?.kind === 'number' && /^\d+$/u.test(typed.word)) return [make(typed.word, at + 1)];
  const out: NumberReading[] = [];
  let decimal = '';
  for (let end = at; ; end += 1) {
    const digit = digitOf(wordAt(tokens, end));
    if (digit === undefined) break;
    decimal += String(digit);
    out.push(make(decimal, end + 1));
  }
  const alike = soundAlikes[wordAt(tokens, at) ?? ''];
  if (alike !== undefined && onlyAfterNumbers.has(wordAt(tokens, at + 1) ?? ''))
    out.push({ ...make(String(alike), at + 1), heard: true });
  if (out.length === 0) {
    const pair = belowHundred(tokens, at).at(-1);
    if (pair !== undefined && pair.value >= 10) out.push(make(String(pair.value), pair.end));
  }
  return out;
}

const fractions: readonly (readonly [readonly string[], number])[] = [
  [['a', 'half'], 0.5],
  [['one', 'half'], 0.5],
  [['half'], 0.5],
  [['a', 'quarter'], 0.25],
  [['one', 'quarter'], 0.25],
  [['quarter'], 0.25],
  [['three', 'quarters'], 0.75],
  [['three', 'quarter'], 0.75],
  [['1', '/', '2'], 0.5],
  [['1', '/', '4'], 0.25],
  [['3', '/', '4'], 0.75],
  [['a', 'tenth', 'of', 'a'], 0.1],
  [['one', 'tenth', 'of', 'a'], 0.1],
];

function andFraction(tokens: readonly Token[], integer: Part): NumberReading[] {
  if (wordAt(tokens, integer.end) !== 'and') return [];
  return fractionsAt(tokens, integer.end + 1).map(([value, end]) => ({
    ...reading(String(integer.value + value), end),
    heard: integer.heard === true,
  }));
}

function bareFraction(tokens: readonly Token[], at: number): NumberReading[] {
  return fractionsAt(tokens, at).map(([value, end]) => reading(String(value), end));
}

function fractionsAt(tokens: readonly Token[], at: number): readonly (readonly [number, number])[] {
  return fractions
    .filter(([words]) => words.every((word, ahead) => tokens[at + ahead]?.word === word))
    .map(([words, value]) => [value, at + words.length] as const)
    .slice(0, 1);
}

function plain(part: Part): NumberReading {
  return { ...reading(String(part.value), part.end), heard: part.heard === true };
}

function reading(written: string, end: number): NumberReading {
  return { value: Number(written), written, end, signed: false, heard: false };
}
