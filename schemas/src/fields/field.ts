import * as z from 'zod';
import type { Notation } from '../notation/notation.ts';
import { identifier, prose } from '../notation/plain.ts';
import { quantityIn, type Quantity } from '../notation/quantity.ts';
import type { Vocabulary } from '../notation/words.ts';
import type { Guide, ValueGuide } from './guide.ts';

z.config({ jitless: true });

/** A value as a schema delivers it: what it means, and the text it was read from. */
export interface Valued<T> {
  readonly leaf: true;
  readonly value: T;
  readonly text: string;
}

/**
 * The guide of every schema made here, kept beside the schema: metadata set with `.meta()` would be lost by
 * `.optional()`.
 */
export const guides = z.registry<Guide & { readonly notation?: Notation<unknown> }>();

export type Leaf<T> = z.ZodType<Valued<T>, string>;
export type Section<S extends z.ZodRawShape> = z.ZodObject<
  { [K in keyof S]: z.ZodOptional<Extract<S[K], z.ZodType>> },
  z.core.$strict
>;

/** A field with one value, read by a notation from the text as typed. */
export function value<T>(notation: Notation<T>, guide: Guide): Leaf<T> {
  const schema = z.string().transform((text, context): Valued<T> => {
    const reading = notation.read(text);
    if (reading.ok) return { leaf: true, value: reading.value, text };
    context.issues.push({ code: 'custom', input: text, message: reading.fault.message });
    return z.NEVER;
  });
  guides.add(schema, { ...guide, notation } satisfies ValueGuide);
  return schema;
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
export function section<S extends Readonly<Record<string, z.ZodType>>>(guide: Guide, fields: S): Section<S> {
  const shape = Object.fromEntries(Object.entries(fields).map(([key, schema]) => [key, schema.optional()]));
  const schema = z.strictObject(shape) as unknown as Section<S>;
  guides.add(schema, guide);
  return schema;
}

/** A list of groups or of values. */
export function list<E extends z.ZodType>(guide: Guide, item: E): z.ZodArray<E> {
  const schema = z.array(item);
  guides.add(schema, guide);
  return schema;
}
