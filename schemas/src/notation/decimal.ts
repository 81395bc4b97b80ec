import { bad, type Reading } from './notation.ts';

/** A number as it was typed: 21.50 is not 21.5 in a signed record. */
export interface Decimal {
  readonly amount: number;
  readonly typed: string;
}

/** ASCII and typographic signs and decimals; no exponent, no hexadecimal, no digit grouping. */
export const DECIMAL = String.raw`[+\-\u2212\u2013]?(?:\d+(?:\.\d+)?|\.\d+)`;
export const UNSIGNED = String.raw`(?:\d+(?:\.\d+)?|\.\d+)`;
/** The sign of a degree, and the two signs that keyboards and copied text put in its place. */
export const DEGREE = '[°º˚]';

const wholeDecimal = new RegExp(`^${DECIMAL}$`, 'u');

/** Reads one decimal, or undefined. A typographic minus counts as a minus. */
export function readDecimal(text: string): Decimal | undefined {
  if (!wholeDecimal.test(text)) return undefined;
  return { amount: Number(text.replace(/[\u2212\u2013]/u, '-')), typed: text };
}

/** Whether a text holds a decimal comma, as in 21,5. */
export function hasDecimalComma(text: string): boolean {
  return /(?<!\d)\d+,\d+(?!\d)/u.test(text);
}

/** A comma that may as well group thousands: three digits behind it, and before it a number that does not begin with 0. */
const GROUPING = /(?<!\d)[1-9]\d*,\d{3}(?!\d)/u;

/**
 * What is said of a text with a decimal comma. Where the comma may group thousands, nothing is suggested: as a point it
 * would make the number a thousandth of what was meant.
 */
export function decimalComma(text: string): Reading<never> {
  const number = GROUPING.exec(text)?.[0];
  if (number !== undefined)
    return bad(
      'decimal-comma',
      `“${text}”: the comma in ${number} may stand for a point or mark the thousands. Write ${number.replace(',', '.')} or ${number.replace(',', '')}, whichever is meant.`,
    );
  const suggestion = text.replace(/(\d),(\d)/gu, '$1.$2');
  return bad('decimal-comma', `“${text}” has a decimal comma; write a point: ${suggestion}.`, suggestion);
}
