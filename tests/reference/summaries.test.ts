import jstat from 'jstat';
import * as simple from 'simple-statistics';
import { expect, test } from 'vitest';
import { summariseErrors } from '../../server/src/note/statistics/summaries.ts';

const pairs: readonly (readonly [achieved: number, predicted: number])[] = [
  [-0.25, -0.1],
  [0.5, 0.05],
  [-1, -0.3],
  [0, -0.25],
  [0.25, -0.4],
  [-0.5, -0.45],
  [-2, -1.1],
  [0.125, 0],
];
const errors = pairs.map(([achieved, predicted]) => achieved - predicted);

// Measures: Hoffer et al., Am J Ophthalmol 2015;160:403-5. Values of an independent implementation in Python.
test('eight prediction errors', () => {
  const summary = summariseErrors(errors, [0.25, 0.5, 0.75, 1, 2]);
  expect(summary?.n).toBe(8);
  expect(summary?.mean).toBeCloseTo(-0.040625, 9);
  expect(summary?.meanAbsolute).toBeCloseTo(0.409375, 9);
  expect(summary?.medianAbsolute).toBeCloseTo(0.35, 9);
  expect(summary?.rootMeanSquare).toBeCloseTo(0.503503, 6);
  expect(summary?.sd).toBeCloseTo(0.536513, 6);
  expect(summary?.within.map((w) => w.percent)).toEqual([50, 62.5, 87.5, 100, 100]);
});

test('the same figures from simple-statistics, the interval of the mean from jstat', () => {
  const summary = summariseErrors(errors);
  const absolute = errors.map(Math.abs);
  expect(summary?.mean).toBeCloseTo(simple.mean(errors), 12);
  expect(summary?.sd).toBeCloseTo(simple.sampleStandardDeviation(errors), 12);
  expect(summary?.medianAbsolute).toBeCloseTo(simple.median(absolute), 12);
  expect(summary?.rootMeanSquare).toBeCloseTo(simple.rootMeanSquare(errors), 12);
  const half = (jstat.studentt.inv(0.975, 7) * simple.sampleStandardDeviation(errors)) / Math.sqrt(8);
  expect(summary?.meanInterval?.high).toBeCloseTo(simple.mean(errors) + half, 6);
});
