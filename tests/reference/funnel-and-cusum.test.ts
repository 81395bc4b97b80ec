import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { exactFunnelLimits, normalFunnelLimits } from '../../server/src/note/statistics/funnel.ts';
import { observedAgainstExpected } from '../../server/src/note/statistics/observed-expected.ts';
import { cusumChart, cusumWeight } from '../../server/src/note/statistics/risk-adjusted-cusum.ts';

// Formulas: Spiegelhalter, Stat Med 2005;24:1185-202; values of an independent implementation in Python.
test.each([
  { t: 0.0195, n: 200, level: 0.95, normal: [0.000337, 0.038663], exact: [0.000356, 0.038565] },
  { t: 0.0195, n: 200, level: 0.998, normal: [0, 0.049715], exact: [0, 0.053736] },
  { t: 0.01, n: 1000, level: 0.95, normal: [0.003833, 0.016167], exact: [0.003802, 0.016111] },
])('funnel limits about $t at n $n, level $level', ({ t, n, level, normal, exact }) => {
  const byNormal = normalFunnelLimits(t, n, level);
  expect([byNormal.low, byNormal.high].map((v) => v.toFixed(6))).toEqual(normal.map((v) => v.toFixed(6)));
  const byBinomial = exactFunnelLimits(t, n, level);
  expect([byBinomial.low, byBinomial.high].map((v) => v.toFixed(6))).toEqual(exact.map((v) => v.toFixed(6)));
});

test('the exact limit lies between the counts that jstat puts about the tail', () => {
  const [t, n, p] = [0.0195, 650, 0.999];
  const upper = exactFunnelLimits(t, n, 0.998).high * n;
  expect(jstat.binomial.cdf(Math.ceil(upper), n, t)).toBeGreaterThanOrEqual(p);
  expect(jstat.binomial.cdf(Math.floor(upper) - 1, n, t)).toBeLessThan(p);
});

// Steiner, Cook, Farewell, Treasure, Biostatistics 2000;1:441-52, p. 446: logit p = -3.68 + 0.077 score
// (figures seen in the tests of an open statistics package that cites the page).
function riskAt(score: number): number {
  return 1 / (1 + Math.exp(3.68 - 0.077 * score));
}

describe('weights of Steiner 2000', () => {
  test.each([
    { score: 0, oddsRatio: 2, none: -0.024, event: 0.67, digits: [3, 2] },
    { score: 50, oddsRatio: 2, none: -0.43, event: 0.26, digits: [2, 2] },
    { score: 0, oddsRatio: 0.5, none: 0.012, event: -0.681, digits: [3, 3] },
    { score: 50, oddsRatio: 0.5, none: 0.316, event: -0.377, digits: [3, 3] },
  ])('score $score, odds times $oddsRatio', ({ score, oddsRatio, none, event, digits }) => {
    const weight = (happened: boolean): number => cusumWeight({ risk: riskAt(score), event: happened }, { oddsRatio });
    expect(weight(false).toFixed(digits[0])).toBe(none.toFixed(digits[0]));
    expect(weight(true).toFixed(digits[1])).toBe(event.toFixed(digits[1]));
  });

  test('Rigdon & Fricker 2015, logit p = -3.67 + 0.077 score, score 19', () => {
    const at19 = 1 / (1 + Math.exp(3.67 - 0.077 * 19));
    expect(cusumWeight({ risk: at19, event: true }, { oddsRatio: 2 })).toBeCloseTo(0.5986, 4);
    expect(cusumWeight({ risk: at19, event: false }, { oddsRatio: 0.5 })).toBeCloseTo(0.05083, 5);
  });
});

test('six cases: path, observed and expected of an independent implementation', () => {
  const risks = [0.0075, 0.02, 0.05, 0.0075, 0.012, 0.03];
  const events = [false, true, false, false, true, false];
  const cases = risks.map((risk, i) => ({ risk, event: events[i] === true }));
  const chart = cusumChart(cases, { oddsRatio: 2 });
  expect(chart.path.map((v) => v.toFixed(6))).toEqual([
    '0.000000',
    '0.673345',
    '0.624554',
    '0.617082',
    '1.298301',
    '1.268742',
  ]);
  expect(chart.signals).toEqual([]);
  const result = observedAgainstExpected(cases);
  expect(result).toMatchObject({ n: 6, observed: 2 });
  expect(result.expected).toBeCloseTo(0.127, 10);
  expect(result.ratio).toBeCloseTo(15.748031, 6);
});

test('limits of a count of events are those of the chi-square distribution of jstat', () => {
  // Garwood, Biometrika 1936: low = chi2(0.025, 2x)/2, high = chi2(0.975, 2x + 2)/2.
  const cases = Array.from({ length: 500 }, (_, i) => ({ risk: 0.02, event: i % 50 === 0 }));
  const result = observedAgainstExpected(cases);
  expect(result.interval?.low).toBeCloseTo(jstat.chisquare.inv(0.025, 20) / 2 / 10, 6);
  expect(result.interval?.high).toBeCloseTo(jstat.chisquare.inv(0.975, 22) / 2 / 10, 6);
});
