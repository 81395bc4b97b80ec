import jstat from 'jstat';
import { errorFunction } from 'simple-statistics';
import { expect, test } from 'vitest';
import {
  binomialCdf,
  binomialProbability,
  fQuantileTwo,
  normalCdf,
  normalQuantile,
  studentQuantile,
  twoSidedZ,
} from '../../server/src/note/statistics/distributions.ts';
import { logGamma, regularisedBeta, regularisedGamma } from '../../server/src/note/statistics/special-functions.ts';

test('quantiles printed in every table', () => {
  // Standard normal 1.959964 and 3.090232; Student t 2.262 at 9, 1.960 at many; F(2, m) 4.459, 4.103, 3.493.
  expect(twoSidedZ(0.95)).toBeCloseTo(1.959964, 6);
  expect(twoSidedZ(0.998)).toBeCloseTo(3.090232, 6);
  expect(normalQuantile(0.025)).toBeCloseTo(-1.959964, 6);
  expect(studentQuantile(0.975, 9)).toBeCloseTo(2.262, 3);
  expect([8, 10, 20].map((m) => fQuantileTwo(0.95, m).toFixed(3))).toEqual(['4.459', '4.103', '3.493']);
});

test('special functions agree with jstat', () => {
  for (const x of [0.3, 1, 2.5, 10, 150.25]) expect(logGamma(x)).toBeCloseTo(jstat.gammaln(x), 9);
  for (const [x, a, b] of [
    [0.1, 0.5, 0.5],
    [0.9, 3, 7],
    [0.02, 1, 250],
    [0.5, 40, 40],
  ] as const) {
    expect(regularisedBeta(x, a, b)).toBeCloseTo(jstat.beta.cdf(x, a, b), 7);
  }
  for (const [a, x] of [
    [0.5, 0.1],
    [3, 2],
    [10, 25],
    [40, 38],
  ] as const) {
    expect(regularisedGamma(a, x)).toBeCloseTo(jstat.lowRegGamma(a, x), 9);
  }
});

test('distributions agree with jstat and simple-statistics', () => {
  for (const z of [-3, -1.2, 0, 0.4, 2.7]) {
    expect(normalCdf(z)).toBeCloseTo(jstat.normal.cdf(z, 0, 1), 9);
    // simple-statistics uses a rational approximation good to seven decimals.
    expect(normalCdf(z)).toBeCloseTo((1 + errorFunction(z / Math.SQRT2)) / 2, 6);
  }
  for (const df of [1, 4, 30]) expect(studentQuantile(0.9, df)).toBeCloseTo(jstat.studentt.inv(0.9, df), 6);
  for (const m of [2, 9, 120]) expect(fQuantileTwo(0.99, m)).toBeCloseTo(jstat.centralF.inv(0.99, 2, m), 5);
  for (const [k, n, p] of [
    [0, 20, 0.02],
    [5, 200, 0.0195],
    [300, 600, 0.5],
  ] as const) {
    expect(binomialCdf(k, n, p)).toBeCloseTo(jstat.binomial.cdf(k, n, p), 9);
    expect(binomialProbability(k, n, p)).toBeCloseTo(jstat.binomial.pdf(k, n, p), 9);
  }
});
