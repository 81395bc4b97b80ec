import type { Notation } from '../notation/notation.ts';
import { identifier, prose } from '../notation/plain.ts';
import { quantityIn, type Quantity } from '../notation/quantity.ts';
import type { Vocabulary } from '../notation/words.ts';
import type { Guide } from './guide.ts';
import type { GroupPlan, ListPlan, Plan, ValuePlan } from './plan.ts';

/** A value as a schema delivers it: what it means, and the text it was read from. */
export interface Valued<T> {
  readonly leaf: true;
  readonly value: T;
  readonly text: string;
}

declare const output: unique symbol;

/**
 * A field, section or list as the format declares it, and the type of what is read there. The plan stands at once;
 * the zod schema is made from it when it is asked for (schema.ts), so that nobody waits for it who only reads notes.
 */
export interface Declared<O> {
  readonly plan: Plan;
  /** A type only; never there. */
  readonly [output]?: O;
}

/** What is read where something is declared. */
export type OutputOf<D> = D extends { readonly [output]?: infer O } ? Exclude<O, undefined> : never;

export interface Leaf<T> extends Declared<Valued<T>> {
  readonly plan: ValuePlan;
}

export interface Section<S> extends Declared<{ readonly [K in keyof S]?: OutputOf<S[K]> }> {
  readonly plan: GroupPlan;
}

export interface List<E> extends Declared<readonly E[]> {
  readonly plan: ListPlan;
}

/** A field with one value, read by a notation from the text as typed. */
export function value<T>(notation: Notation<T>, guide: Guide): Leaf<T> {
  return { plan: { kind: 'value', guide, notation } };
}

/** A field with a word of a vocabulary. */
export function word<W extends string>(words: Vocabulary<W>, guide: Guide): Leaf<W> {
  return value(words, guide);
}

/** A field with a quantity in a unit; the guide's example is written in it. */
export function quantity(unit: string, guide: Guide & { readonly example: string }): Leaf<Quantity> {
  const signed = /^[+-]/u.test(guide.example) || (guide.possible?.[0] ?? 0) < 0;
  return value(quantityIn(unit, { signed, example: guide.example }), guide);
}

/** A field with free prose. */
export function text(guide: Guide): Leaf<string> {
  return value(prose, { ...guide, prose: true });
}

/** A field with an identifier, kept as typed. */
export function id(guide: Guide): Leaf<string> {
  return value(identifier, guide);
}

/** A group of fields, each of which may be missing: what must be there depends on the note's status, and a check says so. */
export function section<S extends Readonly<Record<string, Declared<unknown>>>>(guide: Guide, fields: S): Section<S> {
  const plans = new Map(Object.entries(fields).map(([key, field]) => [key, field.plan]));
  return { plan: { kind: 'group', guide, fields: plans } };
}

/** A list of groups or of values. */
export function list<E>(guide: Guide, item: Declared<E> & { readonly plan: ValuePlan | GroupPlan }): List<E> {
  return { plan: { kind: 'list', guide, item: item.plan } };
}
