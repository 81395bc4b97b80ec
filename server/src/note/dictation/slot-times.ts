import { sure, type Held } from './held.ts';
import { numbersAt } from './numbers.ts';
import { wordAt, type Token } from './tokens.ts';

const lengths: Readonly<Record<string, string>> = {
  day: 'day',
  days: 'day',
  week: 'week',
  weeks: 'week',
  month: 'month',
  months: 'month',
  year: 'year',
  years: 'year',
};
const shortLengths: Readonly<Record<string, string>> = { '7': 'day', '52': 'week', '12': 'month' };

/** How long: "four weeks", "a fortnight", "4/52", "10 days". */
export function readDuration(tokens: readonly Token[], at: number): readonly Held[] {
  const first =
    wordAt(tokens, at) === 'a' || wordAt(tokens, at) === 'one' ? wordAt(tokens, at + 1) : wordAt(tokens, at);
  const after = first === wordAt(tokens, at) ? at + 1 : at + 2;
  if (first === 'fortnight') return [sure('2 weeks', after)];
  if (wordAt(tokens, at) === 'a' && lengths[first ?? ''] !== undefined)
    return [sure(`1 ${lengths[first ?? '']}`, after)];
  const short = tokens[at];
  if (short?.kind === 'number' && wordAt(tokens, at + 1) === '/') {
    const unit = shortLengths[tokens[at + 2]?.word ?? ''];
    return unit === undefined ? [] : [sure(plural(Number(short.word), unit), at + 3)];
  }
  return numbersAt(tokens, at)
    .filter(({ value, signed }) => !signed && Number.isInteger(value))
    .flatMap(({ value, end, heard }) => {
      const unit = lengths[wordAt(tokens, end) ?? ''];
      return unit === undefined ? [] : [{ text: plural(value, unit), end: end + 1, heard }];
    });
}

function plural(count: number, unit: string): string {
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}

const latin: Readonly<Record<string, string>> = { qds: '4', qid: '4', tds: '3', tid: '3', bd: '2', bid: '2', bds: '2' };
const oftenWords: Readonly<Record<string, string>> = { once: '1', twice: '2', thrice: '3' };
const hourly: Readonly<Record<number, string>> = { 2: '12', 3: '8', 4: '6', 6: '4', 8: '3', 12: '2' };
const daily: readonly (readonly string[])[] = [
  ['a', 'day'],
  ['daily'],
  ['per', 'day'],
  ['every', 'day'],
  ['each', 'day'],
  ['in', 'the', 'day'],
  ['the', 'day'],
  ['/', 'day'],
];

/** How often in a day, as a number. */
export function readFrequency(tokens: readonly Token[], at: number): readonly Held[] {
  const first = wordAt(tokens, at) ?? '';
  if (latin[first] !== undefined) return [sure(latin[first], at + 1)];
  const spelled = ['q', 't', 'b'].includes(first)
    ? latin[[0, 1, 2].map((ahead) => wordAt(tokens, at + ahead) ?? '').join('')]
    : undefined;
  if (spelled !== undefined) return [sure(spelled, at + 3)];
  if (oftenWords[first] !== undefined) {
    const end = dailyEnd(tokens, at + 1);
    return end === undefined ? [] : [sure(oftenWords[first], end)];
  }
  if (first === 'every') return everyHours(tokens, at + 1);
  return numbersAt(tokens, at)
    .filter(({ value, signed }) => !signed && Number.isInteger(value) && value > 0 && value <= 12)
    .flatMap(({ value, end, heard }) => {
      if (wordAt(tokens, end) === 'hourly')
        return hourly[value] === undefined ? [] : [{ text: hourly[value], end: end + 1, heard }];
      const times = ['times', 'x', 'time'].includes(wordAt(tokens, end) ?? '') ? end + 1 : undefined;
      const after = times === undefined ? undefined : dailyEnd(tokens, times);
      // “Six times, for three weeks”: a day, most likely.
      const next = times === undefined ? undefined : tokens[times];
      if (after === undefined && times !== undefined && (next === undefined || next.kind === 'break'))
        return [{ text: String(value), end: times, heard: true }];
      return after === undefined ? [] : [{ text: String(value), end: after, heard }];
    });
}

function everyHours(tokens: readonly Token[], at: number): readonly Held[] {
  return numbersAt(tokens, at)
    .filter(({ value, end }) => hourly[value] !== undefined && wordAt(tokens, end) === 'hours')
    .map(({ value, end, heard }) => ({ text: hourly[value] ?? '', end: end + 1, heard }));
}

function dailyEnd(tokens: readonly Token[], at: number): number | undefined {
  const words = daily.find((form) => form.every((part, ahead) => wordAt(tokens, at + ahead) === part));
  return words === undefined ? undefined : at + words.length;
}

/** Minutes and seconds as a machine shows them, in seconds: "1:12". */
export function readMinutes(tokens: readonly Token[], at: number): readonly Held[] {
  const shown = /^(\d+):(\d\d)$/u.exec(tokens[at]?.word ?? '');
  return shown === null ? [] : [sure(String(Number(shown[1]) * 60 + Number(shown[2])), at + 1)];
}

/** A clock hour that says so. */
export function readClock(tokens: readonly Token[], at: number): readonly Held[] {
  return numbersAt(tokens, at)
    .filter(({ value, signed }) => !signed && Number.isInteger(value) && value >= 1 && value <= 12)
    .flatMap(({ value, end, heard }) => {
      if (wordAt(tokens, end) === 'oclock') return [{ text: `${value} o'clock`, end: end + 1, heard }];
      return wordAt(tokens, end) === 'o' && wordAt(tokens, end + 1) === 'clock'
        ? [{ text: `${value} o'clock`, end: end + 2, heard }]
        : [];
    });
}

/** Words other than numbers that a time can begin with. */
export const timeWords: readonly string[] = [...Object.keys(latin), ...Object.keys(oftenWords), 'every', 'fortnight'];
