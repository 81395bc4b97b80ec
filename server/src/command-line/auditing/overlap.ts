import { WrongUse } from '../world.ts';
import type { PartialFile } from './partial-file.ts';

/**
 * Refuses results that hold the same notes, which would be counted twice. The parts of one divided set are trusted among
 * themselves: a note that stands in two of them stands in two files, and that is for the audit to say. Throws WrongUse.
 */
export function mustNotOverlap(parts: readonly PartialFile[]): void {
  const seen = new Map<string, { readonly file: string; readonly set: string }>();
  for (const [at, { file, shard, partial }] of parts.entries()) {
    const set = shard === undefined ? `result ${at}` : `parts of ${shard.count}`;
    for (const { record, id } of [...partial.operations, ...partial.followUps, ...partial.amendments]) {
      const key = `${record} ${id}`;
      const first = seen.get(key);
      if (first === undefined) seen.set(key, { file, set });
      else if (first.set !== set)
        throw new WrongUse(`${id} stands in ${first.file} and in ${file}: give each note once.`);
    }
  }
}
