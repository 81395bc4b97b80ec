import { WrongUse } from '../world.ts';

/** Part `index` (from 1) of `count`. */
export interface Shard {
  readonly index: number;
  readonly count: number;
}

/** Reads I/N, for instance 2/4. */
export function readShard(text: string): Shard {
  const [, index, count] = /^(\d{1,6})\/(\d{1,6})$/u.exec(text) ?? [];
  const shard = { index: Number(index), count: Number(count) };
  if (!(shard.index >= 1 && shard.index <= shard.count)) {
    throw new WrongUse(`--shard cannot be ${text}. Write part and number of parts, such as 2/4; parts count from 1.`);
  }
  return shard;
}

/** The items of one part: every item lies in exactly one, and the parts are about equally large. */
export function inShard<T>(items: readonly T[], { index, count }: Shard): readonly T[] {
  return items.filter((_, at) => at % count === index - 1);
}
