import { betaQuantile, twoSidedZ } from './distributions.ts';

/** An interval of a proportion, both ends between 0 and 1. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

const DEFAULT_LEVEL = 0.95;

/** Counts make a proportion when they are whole and 0 <= x <= n; nothing can be said of no cases. */
function isProportion(x: number, n: number): boolean {
  return Number.isInteger(x) && Number.isInteger(n) && n > 0 && x >= 0 && x <= n;
}

function clamp(low: number, high: number): Interval {
  return { low: Math.max(0, low), high: Math.min(1, high) };
}

/**
 * Wilson's score interval of x in n; null when x and n are no proportion.
 * Source: Wilson, J Am Stat Assoc 1927;22:209-12; method 3 of Newcombe, Stat Med 1998;17:857-72.
 */
export function wilson(x: number, n: number, level = DEFAULT_LEVEL): Interval | null {
  if (!isProportion(x, n)) return null;
  const z = twoSidedZ(level);
  const p = x / n;
  const centre = p + (z * z) / (2 * n);
  const spread = z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  // At 0 and n the score interval ends exactly at 0 and 1; rounding would leave a trace of 1e-17.
  const { low, high } = clamp((centre - spread) / scale, (centre + spread) / scale);
  return { low: x === 0 ? 0 : low, high: x === n ? 1 : high };
}

/** Wilson's interval with continuity correction: method 4 of Newcombe, Stat Med 1998;17:857-72. */
export function wilsonCorrected(x: number, n: number, level = DEFAULT_LEVEL): Interval | null {
  if (!isProportion(x, n)) return null;
  const z = twoSidedZ(level);
  const p = x / n;
  const q = 1 - p;
  const scale = 2 * (n + z * z);
  const middle = 2 * n * p + z * z;
  const low = (middle - 1 - z * Math.sqrt(z * z - 2 - 1 / n + 4 * p * (n * q + 1))) / scale;
  const high = (middle + 1 + z * Math.sqrt(z * z + 2 - 1 / n + 4 * p * (n * q - 1))) / scale;
  return clamp(x === 0 ? 0 : low, x === n ? 1 : high);
}

/**
 * Clopper and Pearson's exact interval, each tail (1 - level)/2.
 * Source: Clopper & Pearson, Biometrika 1934;26:404-13; method 5 of Newcombe, Stat Med 1998;17:857-72.
 */
export function clopperPearson(x: number, n: number, level = DEFAULT_LEVEL): Interval | null {
  if (!isProportion(x, n)) return null;
  const tail = (1 - level) / 2;
  return {
    low: x === 0 ? 0 : betaQuantile(tail, x, n - x + 1),
    high: x === n ? 1 : betaQuantile(1 - tail, x + 1, n - x),
  };
}

/** The largest chance that still leaves 5 % room for no event in n cases ("rule of three": about 3/n). */
export function upperLimitOfNone(n: number, level = DEFAULT_LEVEL): number | null {
  return isProportion(0, n) ? 1 - (1 - level) ** (1 / n) : null;
}
