import type { Token } from './tokens.ts';

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

const units: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
};
const zeros = new Set(['zero', 'nought', 'naught', 'oh', 'o']);
/** "oh" and "o" are digits only inside a longer number. */
const loneZeros = new Set(['zero', 'nought', 'naught']);
const teens: Readonly<Record<string, number>> = {
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
};
const tens: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const points = new Set(['point', 'dot', 'decimal']);
const soundAlikes: Readonly<Record<string, number>> = { to: 2, too: 2, for: 4, fore: 4, won: 1, ate: 8 };
/** Sound-alikes that never stand before a number as the words they are. */
const clearAlikes = new Set(['too', 'won', 'ate', 'fore']);
/** What must follow a sound-alike so that only a number makes sense there. */
const onlyAfterNumbers = new Set([
  'hundred',
  'oclock',
  'millimetre',
  'millimetres',
  'mm',
  'dioptre',
  'dioptres',
  'degree',
  'degrees',
  'mmhg',
  'percent',
  'milligram',
  'milligrams',
  'mg',
  'millilitre',
  'millilitres',
  'mil',
  'mils',
  'ml',
  'mls',
  'weeks',
  'seconds',
  'die',
  'dye',
]);

interface Part {
  readonly value: number;
  readonly end: number;
  readonly heard?: boolean;
}

/** The digit that a word names, or undefined. */
export function digitOf(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  if (zeros.has(word)) return 0;
  return units[word];
}

/** A spoken number below one hundred: every complete reading, shortest first. */
export function belowHundred(tokens: readonly Token[], at: number): readonly Part[] {
  const word = wordAt(tokens, at);
  if (word === undefined) return [];
  const ten = tens[word];
  if (ten !== undefined) {
    const unit = units[wordAt(tokens, at + 1) ?? ''];
    const alone = { value: ten, end: at + 1 };
    return unit === undefined ? [alone] : [alone, { value: ten + unit, end: at + 2 }];
  }
  const single = teens[word] ?? units[word] ?? (loneZeros.has(word) ? 0 : undefined);
  return single === undefined ? [] : [{ value: single, end: at + 1 }];
}

const none: readonly NumberReading[] = [];

/** Whether a number can begin with a token. */
export function canBeginNumber({ kind, word }: Token): boolean {
  return kind === 'number' || (kind === 'word' && beginnings.has(word));
}

/** Every word that a number can begin with. */
const beginnings: ReadonlySet<string> = new Set([
  ...Object.keys(units),
  ...Object.keys(teens),
  ...Object.keys(tens),
  ...Object.keys(soundAlikes),
  ...loneZeros,
  ...points,
  'a',
  'hundred',
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
  const readings = [...digits(tokens, from), ...spoken(tokens, from)];
  const unique = new Map<number, NumberReading>();
  for (const reading of readings) {
    if (unique.has(reading.end)) continue;
    unique.set(reading.end, sign === undefined ? reading : withSign(reading, sign));
  }
  return [...unique.values()].toSorted((a, b) => b.end - a.end);
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
  out.push(...bareFraction(tokens, at));
  for (const integer of integers(tokens, at)) out.push(plain(integer), ...afterInteger(tokens, integer));
  return out;
}

/** Whole numbers in words. */
function integers(tokens: readonly Token[], at: number): readonly Part[] {
  const word = wordAt(tokens, at);
  if (word === undefined) return [];
  if (word === 'hundred') return hundreds(tokens, { value: 1, end: at });
  if (word === 'a') return wordAt(tokens, at + 1) === 'hundred' ? hundreds(tokens, { value: 1, end: at + 1 }) : [];
  const alike = soundAlikes[word];
  if (alike !== undefined) return heardIntegers(tokens, at, alike);
  return [
    ...heardTens(tokens, at),
    ...belowHundred(tokens, at).flatMap((part) => [
      part,
      ...hundreds(tokens, part),
      ...colloquial(tokens, at, part),
      ...thousands(tokens, part),
    ]),
  ];
}

/** "Twenty too dioptres". */
function heardTens(tokens: readonly Token[], at: number): readonly Part[] {
  const ten = tens[wordAt(tokens, at) ?? ''];
  const alike = soundAlikes[wordAt(tokens, at + 1) ?? ''];
  if (ten === undefined || alike === undefined || !onlyAfterNumbers.has(wordAt(tokens, at + 2) ?? '')) return [];
  return [{ value: ten + alike, end: at + 2, heard: true }];
}

function heardIntegers(tokens: readonly Token[], at: number, value: number): readonly Part[] {
  const next = wordAt(tokens, at + 1) ?? '';
  const part = { value, end: at + 1, heard: true };
  if (next === 'point') return digitOf(wordAt(tokens, at + 2)) === undefined ? [] : [part];
  if (next !== '' && clearAlikes.has(wordAt(tokens, at) ?? '')) {
    const rest = belowHundred(tokens, at + 1).filter((pair) => pair.value >= 10);
    if (rest.length > 0) return rest.map((pair) => ({ value: value * 100 + pair.value, end: pair.end, heard: true }));
  }
  if (!onlyAfterNumbers.has(next)) return [];
  return next === 'hundred' ? hundreds(tokens, part).map((whole) => ({ ...whole, heard: true })) : [part];
}

function hundreds(tokens: readonly Token[], before: Part): readonly Part[] {
  if (wordAt(tokens, before.end) !== 'hundred' || before.value > 99) return [];
  const whole = { value: before.value * 100, end: before.end + 1 };
  const rest = wordAt(tokens, whole.end) === 'and' ? whole.end + 1 : whole.end;
  return [whole, ...belowHundred(tokens, rest).map((part) => ({ value: whole.value + part.value, end: part.end }))];
}

function thousands(tokens: readonly Token[], before: Part): readonly Part[] {
  if (wordAt(tokens, before.end) !== 'thousand') return [];
  const whole = { value: before.value * 1000, end: before.end + 1 };
  const rest = wordAt(tokens, whole.end) === 'and' ? whole.end + 1 : whole.end;
  return [
    whole,
    ...belowHundred(tokens, rest)
      .flatMap((part) => [part, ...hundreds(tokens, part)])
      .map((part) => ({ value: whole.value + part.value, end: part.end })),
  ];
}

/** "one eighty" is 180, "four fifty" 450, "one oh five" 105. */
function colloquial(tokens: readonly Token[], at: number, before: Part): readonly Part[] {
  if (before.end !== at + 1 || before.value < 1 || before.value > 9) return [];
  const next = wordAt(tokens, before.end);
  if (next !== undefined && zeros.has(next)) {
    const unit = units[wordAt(tokens, before.end + 1) ?? ''];
    return unit === undefined ? [] : [{ value: before.value * 100 + unit, end: before.end + 2 }];
  }
  return belowHundred(tokens, before.end)
    .filter((part) => part.value >= 10)
    .map((part) => ({ value: before.value * 100 + part.value, end: part.end }));
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
    heard: integer.heard === true,
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
    .filter(([words]) => words.every((word, ahead) => wordAt(tokens, at + ahead) === word))
    .map(([words, value]) => [value, at + words.length] as const)
    .slice(0, 1);
}

function plain(part: Part): NumberReading {
  return { ...reading(String(part.value), part.end), heard: part.heard === true };
}

function reading(written: string, end: number): NumberReading {
  return { value: Number(written), written, end, signed: false, heard: false };
}

function wordAt(tokens: readonly Token[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'word' ? token.word : undefined;
}
