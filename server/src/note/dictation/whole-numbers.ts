import { wordAt, type Token } from './tokens.ts';

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
export const soundAlikes: Readonly<Record<string, number>> = { to: 2, too: 2, for: 4, fore: 4, won: 1, ate: 8 };
/** Sound-alikes that never stand before a number as the words they are. */
const clearAlikes = new Set(['too', 'won', 'ate', 'fore']);
/** What must follow a sound-alike so that only a number makes sense there. */
export const onlyAfterNumbers = new Set([
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
  'times',
  'die',
  'dye',
]);

/** A whole number, and the position after it. */
export interface Part {
  readonly value: number;
  readonly end: number;
  readonly heard?: boolean;
}

function wordFor(words: Readonly<Record<string, number>>, value: number): string {
  return Object.entries(words).find(([, each]) => each === value)?.[0] ?? 'zero';
}

/** The words of the numbers below one hundred. */
export const numberWords = {
  teens: new Set(Object.keys(teens)),
  tens: new Set(Object.keys(tens)),
  digit: (value: number): string => wordFor(units, value),
  teen: (value: number): string => wordFor(teens, value),
  ten: (value: number): string => wordFor(tens, value),
};

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
    // “Thirty to”, with nothing that “to” could lead to, may have been thirty-two.
    const alone = { value: ten, end: at + 1, heard: isCutOff(tokens, at + 1) };
    return unit === undefined ? [alone] : [alone, { value: ten + unit, end: at + 2 }];
  }
  const single = teens[word] ?? units[word] ?? (loneZeros.has(word) ? 0 : undefined);
  return single === undefined ? [] : [{ value: single, end: at + 1 }];
}

const leads = new Set(['the', 'a', 'an', 'be', 'keep', 'start', 'begin', 'avoid', 'my', 'our', 'his', 'her']);

function isCutOff(tokens: readonly Token[], at: number): boolean {
  const word = wordAt(tokens, at) ?? '';
  if (word !== 'to' && word !== 'too') return false;
  const next = tokens[at + 1];
  return next?.kind !== 'number' && !leads.has(next?.word ?? '') && belowHundred(tokens, at + 1).length === 0;
}

/** Whole numbers in words. */
export function integers(tokens: readonly Token[], at: number): readonly Part[] {
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
  const next = wordAt(tokens, at + 2) ?? '';
  const isNumber = onlyAfterNumbers.has(next) || (next === 'point' && digitOf(wordAt(tokens, at + 3)) !== undefined);
  if (ten === undefined || alike === undefined || !isNumber) return [];
  return [{ value: ten + alike, end: at + 2, heard: true }];
}

function heardIntegers(tokens: readonly Token[], at: number, value: number): readonly Part[] {
  const next = wordAt(tokens, at + 1) ?? '';
  const part = { value, end: at + 1, heard: true };
  if (next === 'point') return isDecimal(tokens, at + 2) ? [part] : [];
  if (next !== '' && clearAlikes.has(wordAt(tokens, at) ?? '')) {
    const rest = belowHundred(tokens, at + 1).filter((pair) => pair.value >= 10);
    if (rest.length > 0) return rest.map((pair) => ({ value: value * 100 + pair.value, end: pair.end, heard: true }));
  }
  if (!onlyAfterNumbers.has(next)) return [];
  return next === 'hundred' ? hundreds(tokens, part).map((whole) => ({ ...whole, heard: true })) : [part];
}

/** Whether a digit stands here, or a word that only a unit behind it makes one. */
function isDecimal(tokens: readonly Token[], at: number): boolean {
  const word = wordAt(tokens, at) ?? '';
  return (
    digitOf(word) !== undefined ||
    (soundAlikes[word] !== undefined && onlyAfterNumbers.has(wordAt(tokens, at + 1) ?? ''))
  );
}

export function hundreds(tokens: readonly Token[], before: Part): readonly Part[] {
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

/** "Two two", a width or a diameter whose point was not spoken: only a guess. */
export function pointless(tokens: readonly Token[], at: number): readonly Part[] {
  const [whole, tenth] = [units[wordAt(tokens, at) ?? ''], units[wordAt(tokens, at + 1) ?? '']];
  if (whole === undefined || tenth === undefined) return [];
  return [{ value: (whole * 10 + tenth) / 10, end: at + 2, heard: true }];
}

/** Every word that a whole number can begin with. */
export const wholeNumberWords: readonly string[] = [
  ...Object.keys(units),
  ...Object.keys(teens),
  ...Object.keys(tens),
  ...Object.keys(soundAlikes),
  ...loneZeros,
  'a',
  'hundred',
];
