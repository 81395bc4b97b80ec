import { canBeginNumber } from './numbers.ts';
import { wordAt, type Token } from './tokens.ts';
import { belowHundred } from './whole-numbers.ts';

const months = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];
const ordinals = [
  'zeroth',
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
  'fourteenth',
  'fifteenth',
  'sixteenth',
  'seventeenth',
  'eighteenth',
  'nineteenth',
  'twentieth',
];

/** A calendar date read from the tokens; `unsure` where day and month could be exchanged. */
export interface DateReading {
  readonly text: string;
  readonly end: number;
  readonly unsure: boolean;
}

const dateWords: ReadonlySet<string> = new Set([
  'the',
  'thirtieth',
  ...ordinals,
  ...months,
  ...months.map((month) => month.slice(0, 3)),
  'sept',
]);

/** Whether a date can begin with a token. */
export function canBeginDate(token: Token): boolean {
  return canBeginNumber(token) || dateWords.has(token.word);
}

interface Part {
  readonly value: number;
  readonly end: number;
}

/** "the fourteenth of March twenty thirty one", "March 14th, 2031", "14/03/2031", "2031-03-14". */
export function dateAt(tokens: readonly Token[], at: number): DateReading | undefined {
  const first = tokens[at];
  if (first === undefined || !canBeginDate(first)) return undefined;
  if (first.kind === 'number' && /^\d{4}-\d{2}-\d{2}$/u.test(first.word)) return made(first.word, at + 1);
  return dayFirst(tokens, at) ?? monthFirst(tokens, at) ?? inDigits(tokens, at);
}

function dayFirst(tokens: readonly Token[], at: number): DateReading | undefined {
  const day = dayAt(tokens, wordAt(tokens, at) === 'the' ? at + 1 : at);
  if (day === undefined) return undefined;
  const month = monthAt(tokens, skip(tokens, day.end, ['day', 'of']));
  if (month === undefined) return undefined;
  const year = yearAt(tokens, skipComma(tokens, month.end));
  return year === undefined ? undefined : calendar(year.value, month.value, day.value, year.end);
}

function monthFirst(tokens: readonly Token[], at: number): DateReading | undefined {
  const month = monthAt(tokens, at);
  if (month === undefined) return undefined;
  const day = dayAt(tokens, skip(tokens, month.end, ['the']));
  if (day === undefined) return undefined;
  const year = yearAt(tokens, skipComma(tokens, day.end));
  return year === undefined ? undefined : calendar(year.value, month.value, day.value, year.end);
}

/** "14/03/2031" and "14.03.2031"; day first, and unsure where both could be a month. */
function inDigits(tokens: readonly Token[], at: number): DateReading | undefined {
  const numbers = [0, 2, 4].map((ahead) => tokens[at + ahead]);
  const marks = [1, 3].map((ahead) => tokens[at + ahead]?.word);
  if (marks.some((mark) => mark !== '/' && mark !== '-')) return undefined;
  if (numbers.some((token) => token?.kind !== 'number' || !/^\d{1,4}$/u.test(token.word))) return undefined;
  const [day = 0, month = 0, year = 0] = numbers.map((token) => Number(token?.word));
  const full = year < 100 ? 2000 + year : year;
  const reading = month > 12 ? calendar(full, day, month, at + 5) : calendar(full, month, day, at + 5);
  return reading === undefined ? undefined : { ...reading, unsure: day <= 12 && month <= 12 && day !== month };
}

function calendar(year: number, month: number, day: number, end: number): DateReading | undefined {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const length = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  if (day < 1 || day > length || year < 1900 || year > 2199) return undefined;
  return made(`${year}-${two(month)}-${two(day)}`, end);
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}

function made(text: string, end: number): DateReading {
  return { text, end, unsure: false };
}

function dayAt(tokens: readonly Token[], at: number): Part | undefined {
  const token = tokens[at];
  if (token === undefined) return undefined;
  if (token.kind === 'number' && /^\d{1,2}$/u.test(token.word)) {
    const suffix = /^(?:st|nd|rd|th)$/u.test(wordAt(tokens, at + 1) ?? '');
    return { value: Number(token.word), end: suffix ? at + 2 : at + 1 };
  }
  const ordinal = ordinals.indexOf(token.word);
  if (ordinal > 0) return { value: ordinal, end: at + 1 };
  if (token.word === 'thirtieth') return { value: 30, end: at + 1 };
  const ten = token.word === 'twenty' ? 20 : token.word === 'thirty' ? 30 : undefined;
  const unit = ordinals.indexOf(wordAt(tokens, at + 1) ?? '');
  if (ten !== undefined && unit > 0 && unit < 10) return { value: ten + unit, end: at + 2 };
  return belowHundred(tokens, at).at(-1);
}

function monthAt(tokens: readonly Token[], at: number): Part | undefined {
  const name = wordAt(tokens, at) ?? '';
  const index = months.findIndex(
    (month) =>
      month === name || (name.length >= 3 && month.slice(0, 3) === name) || (name === 'sept' && month === 'september'),
  );
  return index < 0 ? undefined : { value: index + 1, end: at + 1 };
}

/** "twenty thirty one", "two thousand and thirty one", "2031". */
function yearAt(tokens: readonly Token[], at: number): Part | undefined {
  const token = tokens[at];
  if (token?.kind === 'number' && /^\d{4}$/u.test(token.word)) return { value: Number(token.word), end: at + 1 };
  if (wordAt(tokens, at) === 'two' && wordAt(tokens, at + 1) === 'thousand') {
    const rest = belowHundred(tokens, skip(tokens, at + 2, ['and'])).at(-1);
    return rest === undefined ? { value: 2000, end: at + 2 } : { value: 2000 + rest.value, end: rest.end };
  }
  const century = belowHundred(tokens, at).find(({ value }) => value >= 19 && value <= 21);
  if (century === undefined) return undefined;
  const years = belowHundred(tokens, century.end).at(-1);
  if (years === undefined || years.value < 10) return undefined;
  return { value: century.value * 100 + years.value, end: years.end };
}

function skip(tokens: readonly Token[], at: number, words: readonly string[]): number {
  let next = at;
  while (words.includes(wordAt(tokens, next) ?? '')) next += 1;
  return next;
}

function skipComma(tokens: readonly Token[], at: number): number {
  return tokens[at]?.strength === 'part' ? at + 1 : at;
}
