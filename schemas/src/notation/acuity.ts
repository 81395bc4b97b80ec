import { bad, good, type Notation, type Reading } from './notation.ts';

/** A visual acuity in the notation it was measured in. `letters` are those read more (+) or fewer (-) than the line. */
export type Acuity =
  | { readonly kind: 'fraction'; readonly distance: number; readonly line: number; readonly letters: number }
  | { readonly kind: 'decimal'; readonly decimal: number }
  | { readonly kind: 'logmar'; readonly logmar: number }
  | { readonly kind: 'category'; readonly category: 'CF' | 'HM' | 'PL' | 'NPL' };

const categories: Readonly<Record<string, 'CF' | 'HM' | 'PL' | 'NPL'>> = {
  cf: 'CF',
  'counting fingers': 'CF',
  hm: 'HM',
  'hand movements': 'HM',
  'hand motion': 'HM',
  pl: 'PL',
  lp: 'PL',
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
  const folded = text.trim().toLowerCase();
  const category = categories[folded];
  if (category !== undefined) return good({ kind: 'category', category });
  const fraction = /^(\d+(?:\.\d+)?)\s*\/\s*(\d+(?:\.\d+)?)(?:\s*([+-]\d))?$/u.exec(folded);
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
  const logmar = /^log\s?mar\s*([+-]?\d+(?:\.\d+)?)$/u.exec(folded);
  if (logmar !== null) {
    const value = Number(logmar[1]);
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
