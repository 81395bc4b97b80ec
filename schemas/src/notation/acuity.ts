import { bad, good, type Notation, type Reading } from './notation.ts';

/** A visual acuity in the notation it was measured in. `letters` are those read more (+) or fewer (-) than the line. A score of letters is read as its logMAR. */
export type Acuity =
  | { readonly kind: 'fraction'; readonly distance: number; readonly line: number; readonly letters: number }
  | { readonly kind: 'decimal'; readonly decimal: number }
  | { readonly kind: 'logmar'; readonly logmar: number }
  | { readonly kind: 'category'; readonly category: 'CF' | 'HM' | 'PL' | 'NPL' };

const categories: Readonly<Record<string, 'CF' | 'HM' | 'PL' | 'NPL'>> = {
  cf: 'CF',
  fc: 'CF',
  'counting fingers': 'CF',
  'count fingers': 'CF',
  'finger counting': 'CF',
  hm: 'HM',
  'hand movements': 'HM',
  'hand movement': 'HM',
  'hand motion': 'HM',
  pl: 'PL',
  lp: 'PL',
  'pl+': 'PL',
  'lp+': 'PL',
  'perception of light': 'PL',
  'light perception': 'PL',
  npl: 'NPL',
  nlp: 'NPL',
  'no perception of light': 'NPL',
  'no light perception': 'NPL',
};
/** As a decimal; charts end at 2.0. */
const SHARPEST = 2.5;
/** What hand movements and less are sometimes counted as. */
const DULLEST_LOGMAR = 3;

/** Fingers and hand movements are seen at a distance, which is kept as typed: CF 1 m. */
const AT_DISTANCE =
  /^(?<what>\p{L}[\p{L} ]*?) ?(?:(?:at |@ ?)?\d+(?:\.\d+)? ?(?:m|cm|ft|feet|metres?|meters?)|(?:at|close to) face)$/u;
/** Letters read on a chart of five letters a line: 85 are logMAR 0.0. Source: Ferris et al. 1982 (from memory). */
const LETTERS = /^(?:(?:etdrs )?(?<letters>\d{1,3})(?: etdrs)? letters?|etdrs (?<score>\d{1,3}))$/u;
const MOST_LETTERS = 100;
/** Of a line read in part nobody says how many letters: it counts as the line. */
const FRACTION = /^(\d+(?:\.\d+)?)\s*\/\s*(\d+(?:\.\d+)?)(?:\s*([+-]\d))?(?:\s*p(?:art(?:ial(?:ly)?)?)?)?$/u;
const LOGMAR = /^(?:log\s?mar\s*(?<behind>[+-]?\d+(?:\.\d+)?)|(?<before>[+-]?\d+(?:\.\d+)?)\s*log\s?mar)$/u;

const expected = '6/24, 20/80, 0.25, logMAR 0.60, or CF, HM, PL, NPL';

export const acuity: Notation<Acuity> = {
  name: 'acuity',
  expected,
  bareNumber: true,
  examples: ['6/24', '20/80', '0.25', 'logMAR 0.60', 'CF'],
  read: readAcuity,
  write: (text) => {
    const folded = text.trim().toLowerCase();
    return categories[folded] ?? text.trim().replace(/^log\s?mar\s*/iu, 'logMAR ');
  },
};

function readAcuity(text: string): Reading<Acuity> {
  const folded = text.trim().toLowerCase().replace(/\s+/gu, ' ');
  const category = categoryOf(folded);
  if (category !== undefined) return good({ kind: 'category', category });
  const fraction = FRACTION.exec(folded);
  if (fraction !== null) {
    const distance = Number(fraction[1]);
    const line = Number(fraction[2]);
    if (line > 0 && distance > SHARPEST * line) {
      return bad(
        'unreadable-value',
        `“${text}” would be ${(distance / line).toFixed(1)} as a decimal, sharper than any eye. The distance stands first: 6/24.`,
      );
    }
    if (distance > 0 && line > 0) return good({ kind: 'fraction', distance, line, letters: Number(fraction[3] ?? 0) });
  }
  const letters = LETTERS.exec(folded)?.groups;
  const score = letters?.['letters'] ?? letters?.['score'];
  if (score !== undefined) return lettersRead(Number(score), text);
  const logmar = LOGMAR.exec(folded)?.groups;
  const typed = logmar?.['behind'] ?? logmar?.['before'];
  if (typed !== undefined) {
    const value = Number(typed);
    if (value < -Math.log10(SHARPEST) || value > DULLEST_LOGMAR) {
      return bad(
        'unreadable-value',
        `“${text}” is outside what charts measure, logMAR -0.4 to 3.0. Is the point in its place?`,
      );
    }
    return good({ kind: 'logmar', logmar: value });
  }
  if (/^\d+(?:\.\d+)?$/u.test(folded) && Number(folded) > 0) {
    const decimal = Number(folded);
    if (decimal <= SHARPEST) return good({ kind: 'decimal', decimal });
  }
  return bad('unreadable-value', `“${text}” is not an acuity. Expected ${expected}.`);
}

function categoryOf(folded: string): 'CF' | 'HM' | 'PL' | 'NPL' | undefined {
  const named = categories[folded];
  if (named !== undefined) return named;
  const seen = categories[AT_DISTANCE.exec(folded)?.groups?.['what'] ?? ''];
  return seen === 'CF' || seen === 'HM' ? seen : undefined;
}

function lettersRead(letters: number, text: string): Reading<Acuity> {
  if (letters > 0 && letters <= MOST_LETTERS)
    return good({ kind: 'logmar', logmar: Number((1.7 - 0.02 * letters).toFixed(2)) });
  return bad(
    'unreadable-value',
    `“${text}” is no score of a letter chart: 1 to ${MOST_LETTERS} letters are read there.`,
  );
}
