import type { Field } from '@sideport/schemas';
import type { Notation } from '@sideport/schemas/notation/notation.ts';
import type { Quantity } from '@sideport/schemas/notation/quantity.ts';

const DECIMALS = /[+\-\u2212\u2013]?(?:\d+(?:\.\d+)?|\.\d+)/gu;

/** A number as typed, with a plain minus and without a plus: the form that every reader of numbers takes. */
export function plainDecimal(typed: string): string {
  const text = typed.replace(/[\u2212\u2013]/u, '-').replace(/^\+/u, '');
  return text.replace(/^(-?)\./u, '$10.');
}

/** The amount of a quantity in the field's own unit: as typed, or converted when it was typed in another. */
export function amountOf(quantity: Quantity): string {
  const converted = quantity.typedUnit !== undefined && quantity.typedUnit !== quantity.unit;
  return converted ? String(quantity.amount) : plainDecimal(quantity.typed);
}

/** The decimals of a composed notation in the order in which they stand: sphere, cylinder and axis, for instance. */
export function decimalsOf(text: string): readonly string[] {
  return Array.from(text.matchAll(DECIMALS), ([typed]) => plainDecimal(typed));
}

/** The tidy text of a field: units written out, decimals as typed. */
export function tidyText(field: Field<unknown>, notation: Notation<unknown>): string {
  return notation.write?.(field.text) ?? field.text.trim();
}
