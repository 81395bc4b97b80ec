import type { Field, Quantity } from '@sideport/schemas';
import { refused, type Outcome, type Refused } from '../calculations/outcome.ts';

/** A value that a computation may rest on, with its unit, or why there is none. An Outcome is one too. */
export type Known<T> = { readonly ok: true; readonly value: T; readonly unit: string } | Refused;

/** A value that stands in the note, or that it is missing. */
export function known<T>(value: T | undefined, name: string, unit = ''): Known<T> {
  return value === undefined ? missing(name) : { ok: true, value, unit };
}

export const missing = (name: string): Refused => refused(`${name} is missing`);

/** The amount of a quantity in the field's own unit. */
export function amountOf(field: Field<Quantity> | undefined, name: string): Known<number> {
  return field === undefined ? missing(name) : { ok: true, value: field.value.amount, unit: field.value.unit };
}

/** The value of a field, such as a word. */
export function valueOf<T>(field: Field<T> | undefined, name: string): Known<T> {
  return known(field?.value, name);
}

export type Inputs = Readonly<Record<string, Known<unknown>>>;
export type ValuesOf<I extends Inputs> = { readonly [K in keyof I]: I[K] extends Known<infer T> ? T : never };

/** Goes on from inputs that are all known, or says which of them is missing. */
export function from<I extends Inputs, K extends Known<unknown>>(
  inputs: I,
  goOn: (values: ValuesOf<I>) => K,
): K | Refused {
  const values: Record<string, unknown> = {};
  for (const name in inputs) {
    const input: Known<unknown> | undefined = inputs[name];
    if (input === undefined) continue;
    if (!input.ok) return input;
    values[name] = input.value;
  }
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the loop has just made it so, key by key
  return goOn(values as ValuesOf<I>);
}

/** The value of an outcome with a caution more. */
export function withCautions<V>(outcome: Outcome<V>, cautions: readonly string[]): Outcome<V> {
  return outcome.ok && cautions.length > 0 ? { ...outcome, cautions: [...outcome.cautions, ...cautions] } : outcome;
}
