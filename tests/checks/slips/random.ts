/** A small generator of pseudo-random numbers that gives the same ones for the same seed (mulberry32). */
export interface Random {
  /** A whole number from 0 up to, but not including, `below`. */
  below(below: number): number;
  pick<T>(list: readonly T[]): T | undefined;
}

export function randomOf(seed: number): Random {
  let state = seed;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  return { below, pick: (list) => list[below(list.length)] };
}
