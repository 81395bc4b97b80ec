import { bad, good, type Notation, type Reading } from './notation.ts';

/** How often drops are taken and for how long. */
export interface Regimen {
  /** At first, where they are taken less often later; undefined when taken as needed and no more is said. */
  readonly timesDaily?: number;
  /** days; undefined when the text does not say. */
  readonly days?: number;
}

const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const number = String.raw`[1-9]\d{0,2}|${numbers.join('|')}`;
const perDay = String.raw`(?:a|per|each|every) day|daily|/ ?day`;
/** The abbreviations of prescriptions, with how often a day. */
const latin: Readonly<Record<string, number>> = { qds: 4, qid: 4, tds: 3, tid: 3, bd: 2, bid: 2, nocte: 1, mane: 1 };
const often = [
  `(?<once>once|twice)(?: (?:${perDay}))?`,
  String.raw`(?<latin>${Object.keys(latin).join('|')})`,
  String.raw`x? ?(?<times>${number})(?: times| ?x)?(?: ?(?:${perDay}))?`,
  `(?:every (?<hours>${number}) hours|(?<hourly>${number})[- ]hourly)`,
  '(?<each>hourly|every hour)',
  '(?<single>daily|at night|at bedtime|in the morning|every (?:night|morning|day))',
].join('|');
const byWeek = '(?:weekly|(?:each|every|per) week)';
const taper = `(?:(?:then|and) )?(?:taper|reduc)(?:ing|ed)?(?: (?:by )?(?:one|1)(?: drop)?)?(?: ${byWeek})?`;
const length = String.raw`(?<count>a|${number}) ?(?<unit>day|week|wk|month)s?|(?<parts>[1-9]\d?)/(?<whole>7|52|12)`;
const shape = new RegExp(
  String.raw`^(?:${often})(?:,? ${taper})?(?:,? (?:(?:for|over|x) ?)?(?:${length}))?(?:,? ${taper})?$`,
  'u',
);
/** Once less each week: 6/5/4/3/2/1 weekly. */
const downByWeek = new RegExp(
  String.raw`^(?<counts>\d{1,2}(?:[/-]\d{1,2})+)(?: times)?(?: (?:a day|daily))?,? ${byWeek}$`,
  'u',
);
const daysPer: Readonly<Record<string, number>> = { day: 1, week: 7, wk: 7, month: 30, '7': 1, '52': 7, '12': 30 };
const expected =
  'how often and how long, such as 4 times a day for 4 weeks, or every 2 hours for 1 week, then 4 times a day for 3 weeks';

export const regimen: Notation<Regimen> = {
  name: 'regimen',
  expected,
  bareNumber: false,
  examples: ['4 times a day for 4 weeks', 'once daily'],
  read: readRegimen,
};

/** Said beside the steps, and changing neither how often nor how long. */
const BESIDE = /,? ?\b(?:while awake|when awake|as needed|when needed|if needed|as required|prn)\b/gu;
/** Also the right eye, or four times a day, or half strength: never guessed. */
const TWOFOLD = /\b(?:od|qd|qod|hs)\b/u;
const STOP = /,? (?:and|then) (?:stop|off)$/u;
const AMOUNT = /^(?:1|2|one|two) drops?,? /u;
/** What goes on with the step before it: “4 times a day, for 2 weeks, then tapering”. */
const GOES_ON = new RegExp(String.raw`^(?:for|over|x|taper|reduc|then taper|then reduc|(?:${length})$)`, 'u');

function readRegimen(text: string): Reading<Regimen> {
  const folded = text
    .trim()
    .toLowerCase()
    .replace(/\s+/gu, ' ')
    .replace(/×/gu, 'x')
    .replace(/\b(?:[a-z]\.){2,3}/gu, (points) => points.replace(/\./gu, ''));
  const said = folded.replace(BESIDE, '').replace(/^,? /u, '');
  if (said === '' && folded !== '') return good({});
  const steps = stepsOf(said.replace(STOP, ''));
  const read = steps.filter((step) => step !== 'stat').map((step) => readStep(step));
  if (read.includes(undefined)) {
    const twofold = TWOFOLD.exec(folded)?.[0];
    const why =
      twofold === undefined
        ? `is not a regimen. Expected ${expected}`
        : `cannot be told: “${twofold.toUpperCase()}” is read in two ways. Write the words, such as once daily`;
    return bad('unreadable-value', `“${text}” ${why}.`);
  }
  const [first] = read;
  // Once and at once.
  if (first === undefined) return good({ timesDaily: 1, days: 1 });
  const total = read.reduce<number | undefined>(
    (sum, step) => (sum === undefined || step?.days === undefined ? undefined : sum + step.days),
    0,
  );
  return good(total === undefined ? { timesDaily: first.timesDaily } : { timesDaily: first.timesDaily, days: total });
}

/** The steps of a text, one after the other; a comma parts them too, unless what follows belongs to the step before. */
function stepsOf(text: string): readonly string[] {
  const steps: string[] = [];
  for (const piece of text.split(/,? then (?!taper|reduc)|; ?|, /u).map((one) => one.replace(AMOUNT, '').trim())) {
    const before = steps.at(-1);
    if (before !== undefined && GOES_ON.test(piece)) steps[steps.length - 1] = `${before} ${piece}`;
    else steps.push(piece);
  }
  return steps;
}

interface Step {
  readonly timesDaily: number;
  readonly days: number | undefined;
}

function readStep(text: string): Step | undefined {
  const counts = downByWeek.exec(text)?.groups?.['counts']?.split(/[/-]/u).map(Number);
  if (counts !== undefined) {
    const falls = counts.every((count, at) => count > 0 && (at === 0 || count < (counts[at - 1] ?? 0)));
    return falls ? { timesDaily: counts[0] ?? 0, days: 7 * counts.length } : undefined;
  }
  const said = shape.exec(text)?.groups;
  return said === undefined ? undefined : { timesDaily: timesDailyOf(said), days: daysOf(said) };
}

type Said = Readonly<Record<string, string | undefined>>;

function daysOf(said: Said): number | undefined {
  const count = said['count'] ?? said['parts'];
  if (count === undefined) return undefined;
  return (count === 'a' ? 1 : numberIn(count)) * (daysPer[said['unit'] ?? said['whole'] ?? ''] ?? 1);
}

function timesDailyOf(said: Said): number {
  if (said['once'] !== undefined) return said['once'] === 'twice' ? 2 : 1;
  if (said['latin'] !== undefined) return latin[said['latin']] ?? 1;
  if (said['times'] !== undefined) return numberIn(said['times']);
  const hours = said['hours'] ?? said['hourly'];
  if (hours !== undefined) return 24 / numberIn(hours);
  return said['each'] === undefined ? 1 : 24;
}

function numberIn(text: string): number {
  const index = numbers.indexOf(text);
  return index >= 0 ? index + 1 : Number(text);
}
