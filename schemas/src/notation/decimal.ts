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
