import { studentQuantile } from './distributions.ts';
import type { Interval } from './proportions.ts';

/** Share of values within a bound; the bound itself counts as within. */
export interface Within {
  readonly bound: number;
  readonly count: number;
  readonly percent: number;
}

export interface ErrorSummary {
  readonly n: number;
  readonly mean: number;
  /** Student's limits of the mean; null for a single value. */
  readonly meanInterval: Interval | null;
  /** Sample standard deviation (n - 1); null for a single value. */
  readonly sd: number | null;
  readonly meanAbsolute: number;
  readonly medianAbsolute: number;
  readonly rootMeanSquare: number;
  readonly within: readonly Within[];
}

/** Bounds at which refractive outcome is reported, in dioptres. */
export const REFRACTIVE_BOUNDS = [0.25, 0.5, 0.75, 1] as const;

// 1.10 - 0.85 is 0.2500000000000001 in binary arithmetic, and is a quarter dioptre.
const BOUNDARY_TOLERANCE = 1e-9;

export function mean(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, v) => sum + v, 0) / values.length;
}

/** Middle value, or the mean of the two middle ones; null of nothing. */
export function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle];
  if (upper === undefined) return null;
  const lower = sorted[middle - 1];
  return sorted.length % 2 === 1 || lower === undefined ? upper : (lower + upper) / 2;
}

/** Sample covariance (n - 1) of two equally long lists; null for fewer than two. */
export function covariance(a: readonly number[], b: readonly number[]): number | null {
  const meanA = mean(a);
  const meanB = mean(b);
  if (a.length < 2 || meanA === null || meanB === null) return null;
  return a.reduce((sum, v, i) => sum + (v - meanA) * ((b[i] ?? meanB) - meanB), 0) / (a.length - 1);
}

/** Sample standard deviation (n - 1); null for fewer than two. */
export function standardDeviation(values: readonly number[]): number | null {
  const variance = covariance(values, values);
  return variance === null ? null : Math.sqrt(variance);
}

/**
 * Summary of prediction errors (achieved minus predicted spherical equivalent, minus = more myopic), in dioptres.
 * Null of no errors. Measures: Hoffer et al., Am J Ophthalmol 2015;160:403-5;
 * Wang et al., J Cataract Refract Surg 2017;43:999-1002 (absolute errors are not normal: median beside mean).
 */
export function summariseErrors(
  errors: readonly number[],
  bounds: readonly number[] = REFRACTIVE_BOUNDS,
  level = 0.95,
): ErrorSummary | null {
  const n = errors.length;
  const average = mean(errors);
  const absolute = errors.map(Math.abs);
  const meanAbsolute = mean(absolute);
  const medianAbsolute = median(absolute);
  const meanSquare = mean(errors.map((e) => e * e));
  if (average === null || meanAbsolute === null || medianAbsolute === null || meanSquare === null) return null;
  const sd = standardDeviation(errors);
  const half = sd === null ? null : (studentQuantile((1 + level) / 2, n - 1) * sd) / Math.sqrt(n);
  return {
    n,
    mean: average,
    meanInterval: half === null ? null : { low: average - half, high: average + half },
    sd,
    meanAbsolute,
    medianAbsolute,
    rootMeanSquare: Math.sqrt(meanSquare),
    within: bounds.map((bound) => {
      const count = absolute.filter((e) => e <= bound + BOUNDARY_TOLERANCE).length;
      return { bound, count, percent: (100 * count) / n };
    }),
  };
}
