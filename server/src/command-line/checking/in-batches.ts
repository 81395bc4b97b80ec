import type { Checker } from './checker.ts';

const BATCH = 40;

/** Lets the answers of other threads in. */
const turn = (): Promise<void> => new Promise((resolve) => void setImmediate(resolve));

/**
 * Does work on items with several checkers: each takes the next batch as soon as it has done one. The results stand
 * in the order of the items, whichever checker did them.
 */
export async function inBatches<I, R>(
  items: readonly I[],
  checkers: readonly Checker[],
  work: (checker: Checker, batch: readonly I[]) => Promise<readonly R[]>,
  done: (count: number) => void = () => undefined,
): Promise<readonly R[]> {
  const results: (readonly R[])[] = [];
  let next = 0;
  let finished = 0;
  const takeAll = async (checker: Checker): Promise<void> => {
    while (next * BATCH < items.length) {
      const at = next;
      next += 1;
      const batch = items.slice(at * BATCH, (at + 1) * BATCH);
      results[at] = await work(checker, batch);
      finished += batch.length;
      done(finished);
      await turn();
    }
  };
  await Promise.all(checkers.flatMap((checker) => Array.from({ length: checker.ahead }, () => takeAll(checker))));
  return results.flat();
}
