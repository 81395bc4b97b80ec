import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import {
  clopperPearson,
  upperLimitOfNone,
  wilson,
  wilsonCorrected,
  type Interval,
} from '../../server/src/note/statistics/proportions.ts';

// Newcombe RG. Two-sided confidence intervals for the single proportion. Stat Med 1998;17:857-72, table I,
// methods 3, 4 and 5 (table from memory; the Wilson limits of 81/263 also seen in a second publication).
const NEWCOMBE = [
  { x: 81, n: 263, score: [0.2553, 0.3662], corrected: [0.2535, 0.3682], exact: [0.2527, 0.3676] },
  { x: 15, n: 148, score: [0.0624, 0.1605], corrected: [0.0598, 0.1644], exact: [0.0578, 0.1617] },
  { x: 0, n: 20, score: [0, 0.1611], corrected: [0, 0.2005], exact: [0, 0.1684] },
  { x: 1, n: 29, score: [0.0061, 0.1718], corrected: [0.0018, 0.1963], exact: [0.0009, 0.1776] },
] as const;

function rounded(interval: Interval | null): readonly string[] {
  return interval === null ? [] : [interval.low.toFixed(4), interval.high.toFixed(4)];
}

function printed(limits: readonly number[]): readonly string[] {
  return limits.map((limit) => limit.toFixed(4));
}

describe('the 24 limits of Newcombe 1998 to four decimals', () => {
  test.each(NEWCOMBE)('$x of $n', ({ x, n, score, corrected, exact }) => {
    expect(rounded(wilson(x, n))).toEqual(printed(score));
    expect(rounded(wilsonCorrected(x, n))).toEqual(printed(corrected));
    expect(rounded(clopperPearson(x, n))).toEqual(printed(exact));
  });
});

// Values of an independent implementation in Python (own algebra), tolerance 0.0005.
test.each([
  { x: 3, n: 250, score: [0.004089, 0.034681], exact: [0.002482, 0.034667] },
  { x: 0, n: 120, score: [0, 0.031019], exact: [0, 0.030273] },
  { x: 7, n: 90, score: [0.038185, 0.151939], exact: [0.031843, 0.153706] },
])('$x of $n agrees with an independent implementation', ({ x, n, score, exact }) => {
  expect(wilson(x, n)?.low).toBeCloseTo(score[0] ?? NaN, 6);
  expect(wilson(x, n)?.high).toBeCloseTo(score[1] ?? NaN, 6);
  expect(clopperPearson(x, n)?.low).toBeCloseTo(exact[0] ?? NaN, 6);
  expect(clopperPearson(x, n)?.high).toBeCloseTo(exact[1] ?? NaN, 6);
});

test('the exact interval agrees with the beta quantiles of jstat', () => {
  for (const [x, n] of [
    [1, 5],
    [12, 40],
    [39, 40],
    [4, 2000],
    [199, 1000],
  ] as const) {
    expect(clopperPearson(x, n)?.low).toBeCloseTo(jstat.beta.inv(0.025, x, n - x + 1), 7);
    expect(clopperPearson(x, n)?.high).toBeCloseTo(jstat.beta.inv(0.975, x + 1, n - x), 7);
  }
});

test('no event in 300 cases leaves room for about one in a hundred', () => {
  // Hanley & Lippman-Hand, JAMA 1983;249:1743-5 (rule of three; from memory).
  expect(upperLimitOfNone(300)).toBeCloseTo(0.00994, 5);
});
