import * as z from 'zod';
import { WrongUse } from '../world.ts';
import type { Shard } from './shard.ts';

/** How a result of a shard says which part it is. */
export const shardMark = z.optional(z.object({ index: z.int().positive(), count: z.int().positive() }));

/** A result that is put together with others. */
export interface Part {
  readonly file: string;
  /** Which part of a set it is, where it says so. */
  readonly shard: Shard | undefined;
}

/**
 * Holds the parts of a divided set against each other: none twice, none missing. Results that are no part of anything
 * stand for themselves. Throws WrongUse.
 */
export function mustBeWhole(parts: readonly Part[]): void {
  const byCount = new Map<number, Map<number, string>>();
  for (const { file, shard } of parts) {
    if (shard === undefined) continue;
    const found = byCount.get(shard.count) ?? new Map<number, string>();
    byCount.set(shard.count, found);
    const first = found.get(shard.index);
    if (first !== undefined)
      throw new WrongUse(`${first} and ${file} are both part ${shard.index} of ${shard.count}: give each part once.`);
    found.set(shard.index, file);
  }
  for (const [count, found] of byCount) {
    const missing = Array.from({ length: count }, (_, at) => at + 1).filter((index) => !found.has(index));
    if (missing.length > 0)
      throw new WrongUse(
        `${missing.length === 1 ? 'Part' : 'Parts'} ${missing.join(', ')} of ${count} ${missing.length === 1 ? 'is' : 'are'} missing: a result without ${missing.length === 1 ? 'it' : 'them'} would say too little.`,
      );
  }
}
