import { binomialCdf, binomialProbability, twoSidedZ } from './distributions.ts';
import type { Interval } from './proportions.ts';

/**
 * Funnel limits about a target rate for a unit with n cases: t ± z sqrt(t(1-t)/n), kept inside 0 to 1.
 * Source: Spiegelhalter, Stat Med 2005;24:1185-202. Too narrow above for rare events: prefer the exact limits.
 */
export function normalFunnelLimits(target: number, n: number, level: number): Interval {
  const half = twoSidedZ(level) * Math.sqrt((target * (1 - target)) / n);
  return { low: Math.max(0, target - half), high: Math.min(1, target + half) };
}

/**
 * One limit of the exact binomial funnel, interpolated between neighbouring counts so that the line is smooth:
 * r = least count with F(r) >= p, a = (F(r) - p)/(F(r) - F(r-1)), limit (r - a)/n, never below 0.
 * Source: Spiegelhalter, Stat Med 2005;24:1185-202, appendix (from memory).
 */
function interpolatedLimit(target: number, n: number, p: number): number {
  let low = 0;
  let high = n;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (binomialCdf(middle, n, target) >= p) high = middle;
    else low = middle + 1;
  }
  const a = (binomialCdf(low, n, target) - p) / binomialProbability(low, n, target);
  return Math.max(0, (low - a) / n);
}

/** Exact binomial funnel limits about a target rate (0 < target < 1) for a unit with n > 0 cases. */
export function exactFunnelLimits(target: number, n: number, level: number): Interval {
  const tail = (1 - level) / 2;
  return { low: interpolatedLimit(target, n, tail), high: interpolatedLimit(target, n, 1 - tail) };
}
