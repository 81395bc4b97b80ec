import type { Field } from '@sideport/schemas';
import type { Notation } from '@sideport/schemas/notation/notation.ts';
import type { Quantity } from '@sideport/schemas/notation/quantity.ts';
import { conversion } from '@sideport/schemas/notation/units.ts';

const DECIMALS = /[+\-\u2212\u2013]?(?:\d+(?:\.\d+)?|\.\d+)/gu;

/** A number as typed, with a plain minus and without a plus: the form that every reader of numbers takes. */
export function plainDecimal(typed: string): string {
  const text = typed.replace(/[\u2212\u2013]/u, '-').replace(/^\+/u, '');
  return text.replace(/^(-?)\./u, '$10.');
}

/**
 * The amount of a quantity in the field's own unit: as typed, or converted when it was typed in another. Where the
 * conversion only moves the point, no digit is lost or added: 2.3410 cm is 23.410 mm.
 */
export function amountOf({ amount, typed, typedUnit, unit }: Quantity): string {
  if (typedUnit === undefined || typedUnit === unit) return plainDecimal(typed);
  const places = Math.log10(conversion(typedUnit, unit) ?? Number.NaN);
  if (!Number.isInteger(places)) return String(amount);
  const decimals = /\.(\d+)$/u.exec(typed)?.[1]?.length ?? 0;
  return amount.toFixed(Math.max(0, decimals - places));
}

/** Decimals that a number held in binary keeps without noise, where it is below 10. */
const SURE_DECIMALS = 12;

/**
 * A computed number as it leaves, the same in every form of export: never in exponent form, and without the noise of
 * binary arithmetic (-2.9e-17 is 0, 0.1 + 0.2 is 0.3).
 */
export function computedDecimal(value: number): string {
  const before = Math.max(0, Math.floor(Math.log10(Math.abs(value))));
  const fixed = value.toFixed(Math.max(0, SURE_DECIMALS - before));
  const text = fixed.includes('.') ? fixed.replace(/\.?0+$/u, '') : fixed;
  return text === '-0' ? '0' : text;
}

/** The decimals of a composed notation in the order in which they stand: sphere (plano is 0), cylinder and axis. */
export function decimalsOf(text: string): readonly string[] {
  return Array.from(text.replace(/^\s*pl(?:ano)?/iu, '0').matchAll(DECIMALS), ([typed]) => plainDecimal(typed));
}

/** A number that a notation has read: with its digits where they stand in the text, as worked out otherwise. */
export function typedOr(text: string | undefined, value: number): string {
  return decimalsOf(text ?? '').find((typed) => Number(typed) === value) ?? String(value);
}

/** The tidy text of a field: units written out, decimals as typed. */
export function tidyText(field: Field<unknown>, notation: Notation<unknown>): string {
  return notation.write?.(field.text) ?? field.text.trim();
}
