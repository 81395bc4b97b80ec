import { logGamma, regularisedBeta, regularisedGamma, solveIncreasing } from './special-functions.ts';

/** Standard normal distribution function. */
export function normalCdf(z: number): number {
  const half = regularisedGamma(0.5, (z * z) / 2) / 2;
  return z < 0 ? 0.5 - half : 0.5 + half;
}

/** Standard normal quantile for 0 < p < 1. */
export function normalQuantile(p: number): number {
  return p < 0.5 ? -normalQuantile(1 - p) : solveIncreasing(normalCdf, p, 0, 40);
}

/** z of a two-sided level: 0.95 gives 1.95996. */
export function twoSidedZ(level: number): number {
  return normalQuantile((1 + level) / 2);
}

/** Quantile of Student's t with df > 0 degrees of freedom, 0 < p < 1. */
export function studentQuantile(p: number, df: number): number {
  if (p < 0.5) return -studentQuantile(1 - p, df);
  const x = betaQuantile(2 * (1 - p), df / 2, 0.5);
  return Math.sqrt((df * (1 - x)) / x);
}

/** Quantile of the beta distribution. */
export function betaQuantile(p: number, a: number, b: number): number {
  return solveIncreasing((x) => regularisedBeta(x, a, b), p, 0, 1);
}

/** P(X <= k) of a binomial distribution with n trials and chance t. */
export function binomialCdf(k: number, n: number, t: number): number {
  if (k < 0) return 0;
  return k >= n ? 1 : regularisedBeta(1 - t, n - k, k + 1);
}

/** P(X = k) of a binomial distribution with n trials and chance 0 < t < 1. */
export function binomialProbability(k: number, n: number, t: number): number {
  if (k < 0 || k > n) return 0;
  const choose = logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
  return Math.exp(choose + k * Math.log(t) + (n - k) * Math.log1p(-t));
}

/**
 * Quantile of the F distribution with 2 and m degrees of freedom, in closed form
 * (m/2)[(1-p)^(-2/m) - 1]; agrees with printed tables (4.459 at m = 8, 3.493 at m = 20).
 */
export function fQuantileTwo(p: number, m: number): number {
  return (m / 2) * ((1 - p) ** (-2 / m) - 1);
}

/** Exact limits of the mean of a Poisson count (Garwood, Biometrika 1936;28:437-42, from memory). */
export function poissonLimits(count: number, level: number): { readonly low: number; readonly high: number } {
  const tail = (1 - level) / 2;
  const reach = count + 40 + 12 * Math.sqrt(count + 1);
  return {
    low: count === 0 ? 0 : solveIncreasing((mean) => regularisedGamma(count, mean), tail, 0, reach),
    high: solveIncreasing((mean) => regularisedGamma(count + 1, mean), 1 - tail, 0, reach),
  };
}
