import { poissonLimits } from './distributions.ts';
import type { Interval } from './proportions.ts';
import type { MonitoredCase } from './risk-adjusted-cusum.ts';

export interface ObservedExpected {
  readonly n: number;
  readonly observed: number;
  /** Sum of the expected risks. */
  readonly expected: number;
  /** Observed over expected; null when nothing was expected. */
  readonly ratio: number | null;
  /** Exact Poisson limits of the observed count over the expected count. */
  readonly interval: Interval | null;
}

/**
 * Observed against expected events (indirect standardisation).
 * Limits: Garwood's exact Poisson limits, a little wide because the cases are binomial (common practice).
 */
export function observedAgainstExpected(cases: readonly MonitoredCase[], level = 0.95): ObservedExpected {
  const observed = cases.filter((one) => one.event).length;
  const expected = cases.reduce((sum, one) => sum + one.risk, 0);
  if (expected <= 0) return { n: cases.length, observed, expected, ratio: null, interval: null };
  const limits = poissonLimits(observed, level);
  return {
    n: cases.length,
    observed,
    expected,
    ratio: observed / expected,
    interval: { low: limits.low / expected, high: limits.high / expected },
  };
}

/** The rate a unit would have had with the case mix of all: its ratio times the overall rate. */
export function adjustedRate(unit: ObservedExpected, overallRate: number): number | null {
  return unit.ratio === null ? null : unit.ratio * overallRate;
}
