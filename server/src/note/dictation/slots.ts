import type { SlotName } from '@sideport/schemas/spoken/phrase.ts';
import { siteWords } from '@sideport/schemas/notation/site.ts';
import { canBeginDate, dateAt } from './dates.ts';
import { belowHundred, digitOf, numbersAt } from './numbers.ts';
import type { Token } from './tokens.ts';

/** What a slot of a phrase holds: its text in the note's notation, and the position after it. */
export interface SlotReading {
  readonly text: string;
  readonly from: number;
  readonly end: number;
  /** Only sounds like it, or could be read in another way: never more than a proposal. */
  readonly heard: boolean;
}

type Reader = (tokens: readonly Token[], at: number) => readonly Omit<SlotReading, 'from'>[];

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
  return readers[slot](tokens, at).map((reading) => ({ ...reading, from: at }));
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

function sure(text: string, end: number): Omit<SlotReading, 'from'> {
  return { text, end, heard: false };
}

const articles: Readonly<Record<string, string>> = { a: '1', an: '1', single: '1', pair: '2', couple: '2', both: '2' };

/** A number of things, up to twenty. */
function readCount(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  const first = word(tokens, at) ?? '';
  if (first === 'a' && ['single', 'pair', 'couple'].includes(word(tokens, at + 1) ?? ''))
    return readCount(tokens, at + 1);
  if ((first === 'pair' || first === 'couple') && word(tokens, at + 1) === 'of') return [sure('2', at + 2)];
  const article = articles[first];
  if (article !== undefined) return [sure(article, at + 1)];
  return numbersAt(tokens, at)
    .filter(({ value, signed, written }) => !signed && value <= 20 && !written.includes('.'))
    .map(({ written, end, heard }) => ({ text: written, end, heard }));
}

/** Two diameters: "twelve fourteen", "13/11", "thirteen by eleven". */
function readPair(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  const first = diameter(tokens, at);
  if (first === undefined) return [];
  let between = unitEnd(tokens, first.end);
  if (['/', '-', 'by', 'over', 'x', 'slash', 'stroke'].includes(word(tokens, between) ?? '')) between += 1;
  const second = diameter(tokens, between);
  return second === undefined ? [] : [sure(`${first.text}/${second.text}`, unitEnd(tokens, second.end))];
}

function unitEnd(tokens: readonly Token[], at: number): number {
  return ['mm', 'millimetre', 'millimetres'].includes(word(tokens, at) ?? '') ? at + 1 : at;
}

function diameter(tokens: readonly Token[], at: number): { readonly text: string; readonly end: number } | undefined {
  const found = numbersAt(tokens, at).find(({ value, signed }) => !signed && value >= 8 && value <= 16);
  return found === undefined ? undefined : { text: found.written, end: found.end };
}

/** A suture's gauge: "ten oh", "ten zero", "10-0", "10/0". */
function readGauge(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  const size = belowHundred(tokens, at).at(0)?.value ?? (tokens[at]?.kind === 'number' ? Number(tokens[at].word) : 0);
  if (!Number.isInteger(size) || size < 6 || size > 11) return [];
  const zero = ['-', '/'].includes(word(tokens, at + 1) ?? '') ? at + 2 : at + 1;
  const isZero = digitOf(word(tokens, zero)) === 0 || (tokens[zero]?.kind === 'number' && tokens[zero].word === '0');
  return isZero ? [sure(`${size}-0`, zero + 1)] : [];
}

const repeats: Readonly<Record<string, number>> = { double: 2, triple: 3 };

/** Digits and letters spoken one by one, with pauses; ends where something else begins. */
function readSerial(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
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
  const digit = digitOf(times === undefined ? token.word : word(tokens, at + 1));
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
  ].includes(word(tokens, at) ?? '');
}

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
function readDuration(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  const first = word(tokens, at) === 'a' || word(tokens, at) === 'one' ? word(tokens, at + 1) : word(tokens, at);
  const after = first === word(tokens, at) ? at + 1 : at + 2;
  if (first === 'fortnight') return [sure('2 weeks', after)];
  if (word(tokens, at) === 'a' && lengths[first ?? ''] !== undefined) return [sure(`1 ${lengths[first ?? '']}`, after)];
  const short = tokens[at];
  if (short?.kind === 'number' && word(tokens, at + 1) === '/') {
    const unit = shortLengths[tokens[at + 2]?.word ?? ''];
    return unit === undefined ? [] : [sure(plural(Number(short.word), unit), at + 3)];
  }
  return numbersAt(tokens, at)
    .filter(({ value, signed }) => !signed && Number.isInteger(value))
    .flatMap(({ value, end, heard }) => {
      const unit = lengths[word(tokens, end) ?? ''];
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
  ['/', 'day'],
];

/** How often in a day, as a number. */
function readFrequency(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  const first = word(tokens, at) ?? '';
  if (latin[first] !== undefined) return [sure(latin[first], at + 1)];
  const spelled = ['q', 't', 'b'].includes(first)
    ? latin[[0, 1, 2].map((ahead) => word(tokens, at + ahead) ?? '').join('')]
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
      if (word(tokens, end) === 'hourly')
        return hourly[value] === undefined ? [] : [{ text: hourly[value], end: end + 1, heard }];
      const times = ['times', 'x', 'time'].includes(word(tokens, end) ?? '') ? end + 1 : undefined;
      const after = times === undefined ? undefined : dailyEnd(tokens, times);
      return after === undefined ? [] : [{ text: String(value), end: after, heard }];
    });
}

function everyHours(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  return numbersAt(tokens, at)
    .filter(({ value, end }) => hourly[value] !== undefined && word(tokens, end) === 'hours')
    .map(({ value, end, heard }) => ({ text: hourly[value] ?? '', end: end + 1, heard }));
}

function dailyEnd(tokens: readonly Token[], at: number): number | undefined {
  const words = daily.find((form) => form.every((part, ahead) => word(tokens, at + ahead) === part));
  return words === undefined ? undefined : at + words.length;
}

/** Minutes and seconds as a machine shows them, in seconds: "1:12". */
function readMinutes(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  const shown = /^(\d+):(\d\d)$/u.exec(tokens[at]?.word ?? '');
  return shown === null ? [] : [sure(String(Number(shown[1]) * 60 + Number(shown[2])), at + 1)];
}

/** A clock hour that says so. */
function readClock(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  return numbersAt(tokens, at)
    .filter(({ value, signed }) => !signed && Number.isInteger(value) && value >= 1 && value <= 12)
    .flatMap(({ value, end, heard }) => {
      if (word(tokens, end) === 'oclock') return [{ text: `${value} o'clock`, end: end + 1, heard }];
      return word(tokens, end) === 'o' && word(tokens, end + 1) === 'clock'
        ? [{ text: `${value} o'clock`, end: end + 2, heard }]
        : [];
    });
}

const shortSites: Readonly<Record<string, string>> = {
  temp: 'temporal',
  sup: 'superior',
  nas: 'nasal',
  inf: 'inferior',
  supratemporal: 'superotemporal',
  superiotemporal: 'superotemporal',
  superiorotemporal: 'superotemporal',
  superionasal: 'superonasal',
  inferiortemporal: 'inferotemporal',
  inferotemp: 'inferotemporal',
  superotemp: 'superotemporal',
};

const sites: ReadonlySet<string> = new Set(siteWords);
const sitePrefixes: Readonly<Record<string, 'supero' | 'infero'>> = {
  supero: 'supero',
  superior: 'supero',
  super: 'supero',
  upper: 'supero',
  infero: 'infero',
  inferior: 'infero',
  lower: 'infero',
};

/** A sector of the eye: "temporal", "superotemporally", "supero nasal". */
function readPlace(tokens: readonly Token[], at: number): readonly Omit<SlotReading, 'from'>[] {
  const first = word(tokens, at) ?? '';
  const whole = site(first);
  const out = whole === undefined ? [] : [sure(whole, at + 1)];
  const second = site(word(tokens, at + 1) ?? '');
  const prefix = sitePrefixes[first];
  if (prefix !== undefined && (second === 'temporal' || second === 'nasal'))
    out.unshift(sure(`${prefix}${second}`, at + 2));
  return out;
}

function site(text: string): string | undefined {
  const plainForm = text.replace(/ly$/u, '');
  if (sites.has(plainForm)) return plainForm;
  return shortSites[plainForm];
}

/** Words other than numbers and dates that a slot can begin with. */
const slotWords: ReadonlySet<string> = new Set([
  ...Object.keys(articles),
  ...Object.keys(repeats),
  ...Object.keys(latin),
  ...Object.keys(oftenWords),
  ...Object.keys(shortSites),
  ...siteWords.flatMap((site) => [site, `${site}ly`]),
  ...Object.keys(sitePrefixes),
  'every',
  'fortnight',
  'oh',
  'o',
]);

function word(tokens: readonly Token[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'word' ? token.word : undefined;
}
