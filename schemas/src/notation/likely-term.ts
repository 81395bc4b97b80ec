import { distance } from './near-miss.ts';

/**
 * Whether two texts hold the same numbers. A number is never a near miss of another one: “week 4” is not “week 1”
 * with a slip.
 */
export function sameNumbers(a: string, b: string): boolean {
  return numbersIn(a) === numbersIn(b);
}

/**
 * The term that a mistyped text meant, or undefined where that is not certain: a wrong suggestion that is taken is
 * worse than none. Every word must be near its counterpart by itself, so that no word is exchanged for another;
 * abbreviations, numbers, and beginnings and endings that turn the meaning must be the same. `terms` gives each text
 * that is understood, in lower case, with its term.
 */
export function likelyTerm<W>(text: string, terms: ReadonlyMap<string, W>): W | undefined {
  const typed = wordsIn(text);
  const letters = text.replace(/[^\p{L}]/gu, '').length;
  if (letters <= LONGEST_SIGN || isAbbreviation(text)) return undefined;
  let best: W | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  let isTied = false;
  for (const [candidate, term] of terms) {
    const isShortForm = candidate.length <= LONGEST_ABBREVIATION && candidate !== String(term).toLowerCase();
    if (isShortForm || !sameNumbers(text, candidate)) continue;
    const far = wordsApart(typed, wordsIn(candidate));
    if (far === undefined || far > bestDistance || (far === bestDistance && term === best)) continue;
    isTied = far === bestDistance;
    best = term;
    bestDistance = far;
  }
  return isTied ? undefined : best;
}

/** A word of so few letters is a sign: one letter more or less makes it another. */
const LONGEST_SIGN = 3;
const LONGEST_ABBREVIATION = 5;
/** Slips in a whole text. */
const MOST_SLIPS = 3;

/** Beginnings of words that exchanged for one another turn the meaning; and endings. */
const BEGINNINGS =
  'intra inter infra extra endo epi ecto hyper hypo pre post para peri retro ante sub super supra supero infero macro micro mono multi pseudo'.split(
    ' ',
  );
const ENDINGS = ['otomy', 'ectomy', 'ostomy', 'oplasty', 'opexy', 'itis', 'osis'];

/** How many slips part two texts, word by word; undefined when one of the words may be another word. */
function wordsApart(typed: readonly string[], candidate: readonly string[]): number | undefined {
  if (typed.length !== candidate.length) {
    // Only the blank was forgotten, or put in.
    return fold(typed.join('')) === candidate.join('') ? 0 : undefined;
  }
  let total = 0;
  for (const [index, word] of typed.entries()) {
    const far = wordApart(word, candidate[index] ?? '');
    if (far === undefined) return undefined;
    total += far;
  }
  return total <= MOST_SLIPS ? total : undefined;
}

function wordApart(typed: string, candidate: string): number | undefined {
  const word = fold(typed);
  if (word === candidate) return 0;
  if (Math.min(word.length, candidate.length) <= LONGEST_SIGN || isAbbreviation(typed) || /\d/u.test(word))
    return undefined;
  if (!beginAlike(word, candidate) || turned(word, candidate)) return undefined;
  const limit = word.length < 6 ? 1 : word.length < 9 ? 2 : MOST_SLIPS;
  const far = distance(word, candidate, limit + 1);
  return far <= limit ? far : undefined;
}

/** The first letter is seldom mistyped, and another one mostly makes another word: untreated, incomplete, detached. */
function beginAlike(a: string, b: string): boolean {
  return a[0] === b[0] || (a[0] === b[1] && a[1] === b[0] && a[2] === b[2]);
}

function turned(a: string, b: string): boolean {
  const longest = (list: readonly string[], fits: (part: string) => boolean): string | undefined =>
    list.filter((part) => fits(part)).toSorted((one, other) => other.length - one.length)[0];
  const differ = (one: string | undefined, other: string | undefined): boolean =>
    one !== undefined && other !== undefined && one !== other;
  return (
    differ(
      longest(BEGINNINGS, (part) => a.startsWith(part)),
      longest(BEGINNINGS, (part) => b.startsWith(part)),
    ) ||
    differ(
      longest(ENDINGS, (part) => a.endsWith(part)),
      longest(ENDINGS, (part) => b.endsWith(part)),
    )
  );
}

/** A short text in capitals, with or without points. */
function isAbbreviation(text: string): boolean {
  const letters = text.replace(/[^\p{L}]/gu, '');
  return letters.length <= LONGEST_ABBREVIATION && letters === letters.toUpperCase();
}

function numbersIn(text: string): string {
  return (text.match(/\d+/gu) ?? []).join(' ');
}

function wordsIn(text: string): readonly string[] {
  return text
    .trim()
    .split(/[\s,;/()+&-]+/u)
    .filter((word) => word !== '');
}

function fold(text: string): string {
  return text.toLowerCase();
}
