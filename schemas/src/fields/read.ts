import type { Absence } from './guide.ts';
import type { Valued } from './field.ts';

/** A half-open range of UTF-16 offsets in the text of a note. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Where a field stands in a note: keys and list positions from the top. */
export type Path = readonly (string | number)[];

/** The place of a field: its value, and its key where it has one. */
export interface Place {
  readonly span: Span;
  readonly key: Span | null;
  readonly path: Path;
}

/** One value of a note: what it means, the text as typed, and where it stands. */
export interface Field<T> extends Place {
  readonly value: T;
  readonly text: string;
}

/** A place where the note says why there is no value. */
export interface Said extends Place {
  readonly word: Absence;
}

/** The place of a group or list, and which of its keys say why there is no value. */
export interface GroupPlace extends Place {
  readonly said: Readonly<Record<string, Said>>;
}

/** A list as it was read. Entries that could not be read are missing from `items`. */
export interface ReadList<E> {
  readonly items: readonly E[];
  readonly $: Place;
}

/**
 * What the reader makes of a schema's output: every value becomes a Field with its span, every group carries its
 * place under `$`, and anything may be missing.
 */
export type Read<T> =
  T extends Valued<infer V>
    ? Field<V>
    : T extends readonly (infer E)[]
      ? ReadList<Read<E>>
      : { readonly [K in keyof T]?: Read<Exclude<T[K], undefined>> } & { readonly $: GroupPlace };
