import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { summariseAstigmatism } from '../../server/src/note/statistics/astigmatism-groups.ts';
import { exactFunnelLimits } from '../../server/src/note/statistics/funnel.ts';
import { adjustedRate, observedAgainstExpected } from '../../server/src/note/statistics/observed-expected.ts';
import { clopperPearson, wilson, wilsonCorrected } from '../../server/src/note/statistics/proportions.ts';
import { cusumChart } from '../../server/src/note/statistics/risk-adjusted-cusum.ts';
import { median, summariseErrors } from '../../server/src/note/statistics/summaries.ts';

describe('proportions', () => {
  test('of no cases, or of impossible counts, there is no interval', () => {
    for (const method of [wilson, wilsonCorrected, clopperPearson]) {
      expect(method(0, 0)).toBeNull();
      expect(method(5, 4)).toBeNull();
      expect(method(0.5, 4)).toBeNull();
    }
  });

  test('every interval holds its proportion, stays in 0 to 1, and turns over with its complement', () => {
    const counts = fc
      .integer({ min: 1, max: 3000 })
      .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
    fc.assert(
      fc.property(counts, ([x, n]) => {
        for (const method of [wilson, wilsonCorrected, clopperPearson]) {
          const interval = method(x, n) ?? { low: NaN, high: NaN };
          const mirror = method(n - x, n) ?? { low: NaN, high: NaN };
          expect(interval.low).toBeGreaterThanOrEqual(0);
          expect(interval.low).toBeLessThanOrEqual(x / n);
          expect(interval.high).toBeGreaterThanOrEqual(x / n);
          expect(interval.high).toBeLessThanOrEqual(1);
          expect(mirror.high).toBeCloseTo(1 - interval.low, 9);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('refractive summary', () => {
  test('of nothing there is none; of one eye there is no SD and no interval', () => {
    expect(summariseErrors([])).toBeNull();
    expect(summariseErrors([0.5])).toMatchObject({ n: 1, mean: 0.5, sd: null, meanInterval: null });
  });

  test('a quarter dioptre counts as within a quarter however it was subtracted', () => {
    const errors = [1.1 - 0.85, 0.95 - 0.7, 0.25];
    expect(errors.some((e) => Math.abs(e) > 0.25)).toBe(true);
    expect(summariseErrors(errors)?.within[0]).toEqual({ bound: 0.25, count: 3, percent: 100 });
  });

  test('the median of an even number is the mean of the two middle values', () => {
    expect(median([4, 1, 3, 2])).toBe(2.5);
    expect(median([3, 1, 2])).toBe(2);
    expect(median([])).toBeNull();
  });
});

describe('astigmatism groups', () => {
  test('an empty group gives nothing, one eye no spread, two eyes no ellipse, and say why', () => {
    const eye = { magnitude: 0.5, axis: 90 };
    expect(summariseAstigmatism([])).toBeNull();
    expect(summariseAstigmatism([eye])).toMatchObject({
      n: 1,
      sdX: null,
      sdTotal: null,
      hotelling: null,
      ellipses: null,
      missing: 'One eye has no spread: no SD, no ellipse.',
    });
    expect(summariseAstigmatism([eye, { magnitude: 0.25, axis: 10 }])).toMatchObject({
      n: 2,
      hotelling: null,
      ellipses: null,
      missing: 'An ellipse needs three eyes or more.',
    });
  });

  test('eyes that differ only in magnitude lie on one line', () => {
    const eyes = [0.2, 0.4, 0.9].map((magnitude) => ({ magnitude, axis: 30 }));
    expect(summariseAstigmatism(eyes)?.missing).toBe('All eyes lie on one line of the plot: no ellipse.');
  });

  test('opposite meridians cancel: the centroid has no meridian, the mean magnitude stays', () => {
    const group = summariseAstigmatism([
      { magnitude: 1, axis: 90 },
      { magnitude: 1, axis: 180 },
    ]);
    expect(group?.centroid).toEqual({ magnitude: 0, axis: null });
    expect(group?.meanMagnitude).toBe(1);
  });

  test('5 and 175 degrees average to 180, not to 90', () => {
    const group = summariseAstigmatism([
      { magnitude: 1, axis: 5 },
      { magnitude: 1, axis: 175 },
    ]);
    expect(group?.centroid.axis).toBeCloseTo(180, 9);
  });
});

describe('funnel and chart', () => {
  test('the funnel narrows with n and never leaves 0 to 1', () => {
    const widths = [10, 50, 200, 1000].map((n) => {
      const { low, high } = exactFunnelLimits(0.0195, n, 0.998);
      expect(low).toBeGreaterThanOrEqual(0);
      expect(high).toBeLessThanOrEqual(1);
      return high - low;
    });
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
  });

  test('the chart signals, and starts again from nothing', () => {
    const cases = Array.from({ length: 20 }, () => ({ risk: 0.01, event: true }));
    const chart = cusumChart(cases, { oddsRatio: 2 });
    expect(chart.signals).toEqual([6, 13]);
    expect(chart.path[7]).toBeCloseTo(chart.path[0] ?? NaN, 12);
  });

  test('nothing expected gives no ratio rather than an infinite one', () => {
    const none = observedAgainstExpected([]);
    expect(none).toMatchObject({ n: 0, observed: 0, ratio: null, interval: null });
    expect(adjustedRate(none, 0.02)).toBeNull();
  });
});
