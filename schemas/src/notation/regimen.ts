import { bad, good, type Notation, type Reading } from './notation.ts';

/** How often drops are taken and for how long. */
export interface Regimen {
  /** At first, where they are taken less often later. */
  readonly timesDaily: number;
  /** days; undefined when the text does not say. */
  readonly days?: number;
}

const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const number = String.raw`[1-9]\d{0,2}|${numbers.join('|')}`;
const perDay = String.raw`(?:a|per|each|every) day|daily`;
const often = [
  `(?<once>once|twice)(?: (?:${perDay}))?`,
  String.raw`(?<times>${number})(?: times|x)?(?: (?:${perDay}))?`,
  `(?:every (?<hours>${number}) hours|(?<hourly>${number})[- ]hourly)`,
  '(?<each>hourly|every hour)',
  '(?<single>daily|at night|at bedtime|in the morning|every (?:night|morning|day))',
].join('|');
const taper = '(?:(?:then|and) )?taper(?:ing|ed)?';
const shape = new RegExp(
  String.raw`^(?:${often})(?:,? ${taper})?(?:,? (?:for|over) (?<length>${number}) (?<unit>day|week|month)s?|,? (?<bare>[1-9]\d{0,2}) (?<bareUnit>day|week|month)s?)?(?:,? ${taper})?$`,
  'u',
);
const daysPer: Readonly<Record<string, number>> = { day: 1, week: 7, month: 30 };
const expected =
  'how often and how long, such as 4 times a day for 4 weeks, or every 2 hours for 1 week, then 4 times a day for 3 weeks';

export const regimen: Notation<Regimen> = {
  name: 'regimen',
  expected,
  bareNumber: false,
  examples: ['4 times a day for 4 weeks', 'once daily'],
  read: readRegimen,
};

function readRegimen(text: string): Reading<Regimen> {
  const steps = text
    .trim()
    .toLowerCase()
    .replace(/\s+/gu, ' ')
    .split(/,? then (?!taper)|; /u)
    .map((step) => shape.exec(step)?.groups);
  const first = steps[0];
  if (first === undefined || steps.includes(undefined))
    return bad('unreadable-value', `“${text}” is not a regimen. Expected ${expected}.`);
  const timesDaily = timesDailyOf(first);
  const days = steps.map((step) => daysOf(step ?? {}));
  const total = days.reduce((sum, some) => (sum === undefined || some === undefined ? undefined : sum + some));
  return good(total === undefined ? { timesDaily } : { timesDaily, days: total });
}

type Said = Readonly<Record<string, string | undefined>>;

function daysOf(said: Said): number | undefined {
  const length = said['length'] ?? said['bare'];
  return length === undefined ? undefined : numberIn(length) * (daysPer[said['unit'] ?? said['bareUnit'] ?? ''] ?? 1);
}

function timesDailyOf(said: Said): number {
  if (said['once'] !== undefined) return said['once'] === 'twice' ? 2 : 1;
  if (said['times'] !== undefined) return numberIn(said['times']);
  const hours = said['hours'] ?? said['hourly'];
  if (hours !== undefined) return 24 / numberIn(hours);
  return said['each'] === undefined ? 1 : 24;
}

function numberIn(text: string): number {
  const index = numbers.indexOf(text);
  return index >= 0 ? index + 1 : Number(text);
}
