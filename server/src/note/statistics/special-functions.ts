/**
 * The few special functions that the intervals, quantiles and p-values of the audit rest on.
 * Definitions: Abramowitz & Stegun, Handbook of Mathematical Functions (1964), chapters 6, 7 and 26
 * (from memory; tested against two general-purpose statistics libraries).
 */

// Lanczos' approximation with g = 7 and nine terms: relative error below 1e-14 for positive arguments.
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

const TINY = 1e-300;
const MAX_TERMS = 100_000;

/** Natural logarithm of the gamma function for x > 0. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x - 1;
  const t = shifted + 7.5;
  const sum = LANCZOS.reduce((total, c, i) => total + (i === 0 ? c : c / (shifted + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** A continued fraction b0 + a1/(b1 + a2/(b2 + ...)) by the modified Lentz method. */
function continuedFraction(b0: number, term: (i: number) => readonly [a: number, b: number]): number {
  let f = b0 === 0 ? TINY : b0;
  let c = f;
  let d = 0;
  for (let i = 1; i < MAX_TERMS; i += 1) {
    const [a, b] = term(i);
    d = b + a * d;
    if (d === 0) d = TINY;
    c = b + a / c;
    if (c === 0) c = TINY;
    d = 1 / d;
    const delta = c * d;
    f *= delta;
    if (Math.abs(delta - 1) < 1e-15) break;
  }
  return f;
}

/** Regularised incomplete beta function I_x(a, b) for a, b > 0 and x from 0 to 1. */
export function regularisedBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction converges fast only below the mean; above it use the symmetry I_x(a,b) = 1 - I_(1-x)(b,a).
  if (x > (a + 1) / (a + b + 2)) return 1 - regularisedBeta(1 - x, b, a);
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  const fraction = continuedFraction(1, (i) => {
    const m = Math.floor(i / 2);
    const numerator =
      i % 2 === 0
        ? (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
        : (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    return [numerator, 1];
  });
  return front / (a * fraction);
}

/** Regularised lower incomplete gamma function P(a, x) for a > 0 and x >= 0. */
export function regularisedGamma(a: number, x: number): number {
  if (x <= 0) return 0;
  const front = Math.exp(-x + a * Math.log(x) - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let i = 1; i < MAX_TERMS && Math.abs(term) > Math.abs(sum) * 1e-16; i += 1) {
      term *= x / (a + i);
      sum += term;
    }
    return front * sum;
  }
  return 1 - front / continuedFraction(x + 1 - a, (i) => [-i * (i - a), x + 2 * i + 1 - a]);
}

/**
 * The x between low and high at which an increasing function reaches the wanted value, by halving.
 * Halving is slow and cannot go astray; quantiles are asked for a few hundred times in an audit.
 */
export function solveIncreasing(f: (x: number) => number, wanted: number, low: number, high: number): number {
  let from = low;
  let to = high;
  for (let i = 0; i < 200; i += 1) {
    const middle = (from + to) / 2;
    if (middle === from || middle === to) break;
    if (f(middle) < wanted) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
