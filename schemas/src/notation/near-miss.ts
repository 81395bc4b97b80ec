/**
 * The candidate that a mistyped text most probably meant, or undefined when none is near: Damerau-Levenshtein
 * distance (restricted), at most one edit for short words, two from five letters, three from nine.
 */
export function nearest(text: string, candidates: Iterable<string>): string | undefined {
  const limit = text.length < 5 ? 1 : text.length < 9 ? 2 : 3;
  let best: string | undefined;
  let bestDistance = limit + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - text.length) >= bestDistance) continue;
    const d = distance(text, candidate, bestDistance);
    if (d < bestDistance) {
      best = candidate;
      bestDistance = d;
    }
  }
  return best;
}

/** The distance of two texts, or `enough` when it is at least that. */
export function distance(a: string, b: string, enough: number): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  let leastOfLast = 0;
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let d = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        d = Math.min(d, (beforeLast[j - 2] ?? 0) + 1);
      row.push(d);
      if (d < least) least = d;
    }
    // What follows is reached from one of these two rows, and each step only adds.
    if (Math.min(least, leastOfLast) >= enough) return enough;
    beforeLast = last;
    last = row;
    leastOfLast = least;
  }
  return last[b.length] ?? 0;
}
