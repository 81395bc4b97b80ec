import jstat from 'jstat';
import { EigenvalueDecomposition, Matrix, inverse } from 'ml-matrix';
import { sampleCovariance } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { toPoint } from '../../server/src/note/calculations/astigmatism/double-angle.ts';
import type { Vector } from '../../server/src/note/calculations/quantities.ts';
import { summariseAstigmatism } from '../../server/src/note/statistics/astigmatism-groups.ts';

const pairs: readonly (readonly [number, number])[] = [
  [0.45, 175],
  [0.3, 10],
  [0.62, 160],
  [0.25, 95],
  [0.5, 5],
  [0.38, 20],
  [0.71, 170],
  [0.2, 130],
  [0.55, 178],
  [0.33, 150],
];
const eyes: readonly Vector[] = pairs.map(([magnitude, axis]) => ({ magnitude, axis }));

// Formulas: Hotelling 1931; Holladay, Moran, Kezirian, J Cataract Refract Surg 2001;27:61-79 (from memory).
test('ten eyes: values of an independent implementation in Python', () => {
  const group = summariseAstigmatism(eyes);
  expect(group).toMatchObject({ n: 10, missing: null });
  expect(group?.centroid.magnitude).toBeCloseTo(0.319853, 6);
  expect(group?.centroid.axis).toBeCloseTo(172.291151, 6);
  expect(group?.meanMagnitude).toBeCloseTo(0.429, 9);
  expect(group?.sdMagnitude).toBeCloseTo(0.166296, 6);
  expect(group?.sdX).toBeCloseTo(0.281483, 6);
  expect(group?.sdY).toBeCloseTo(0.198087, 6);
  expect(group?.covariance).toBeCloseTo(-0.003514, 6);
  expect(group?.sdTotal).toBeCloseTo(0.344196, 6);
  expect(group?.hotelling?.t2).toBeCloseTo(13.302526, 5);
  expect(group?.hotelling?.f).toBeCloseTo(5.912234, 5);
  expect(group?.hotelling?.p).toBeCloseTo(0.026519, 6);
  expect(group?.ellipses?.centroid.semiMajor).toBeCloseTo(0.282487, 6);
  expect(group?.ellipses?.centroid.semiMinor).toBeCloseTo(0.197634, 6);
  expect(group?.ellipses?.centroid.planeAngle).toBeCloseTo(175.017264, 5);
  expect(group?.ellipses?.individuals.semiMajor).toBeCloseTo(0.936902, 6);
  expect(group?.ellipses?.individuals.semiMinor).toBeCloseTo(0.655479, 6);
});

describe('against general-purpose libraries', () => {
  const points = eyes.map(toPoint);
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  const n = points.length;
  const covariance = new Matrix([
    [sampleCovariance(xs, xs), sampleCovariance(xs, ys)],
    [sampleCovariance(ys, xs), sampleCovariance(ys, ys)],
  ]);
  const group = summariseAstigmatism(eyes);

  test("Hotelling's T2 by the matrix inverse of ml-matrix, its p by the F distribution of jstat", () => {
    const centre = Matrix.columnVector([group?.centroidPoint.x ?? NaN, group?.centroidPoint.y ?? NaN]);
    const t2 = n * centre.transpose().mmul(inverse(covariance)).mmul(centre).get(0, 0);
    expect(group?.hotelling?.t2).toBeCloseTo(t2, 9);
    const f = (t2 * (n - 2)) / (2 * (n - 1));
    expect(group?.hotelling?.p).toBeCloseTo(1 - jstat.centralF.cdf(f, 2, n - 2), 9);
  });

  test('half lengths and direction of the ellipses by the eigenvectors of ml-matrix', () => {
    const f = jstat.centralF.inv(0.95, 2, n - 2);
    const decomposition = new EigenvalueDecomposition(covariance, { assumeSymmetric: true });
    const [small, large] = decomposition.realEigenvalues;
    const scale = ((2 * (n - 1)) / (n * (n - 2))) * f;
    expect(group?.ellipses?.centroid.semiMajor).toBeCloseTo(Math.sqrt(scale * (large ?? NaN)), 6);
    expect(group?.ellipses?.centroid.semiMinor).toBeCloseTo(Math.sqrt(scale * (small ?? NaN)), 6);
    expect(group?.ellipses?.individuals.semiMajor).toBeCloseTo(Math.sqrt(scale * (n + 1) * (large ?? NaN)), 6);
    const [vx, vy] = decomposition.eigenvectorMatrix.getColumn(1);
    const direction = ((Math.atan2(vy ?? NaN, vx ?? NaN) * 180) / Math.PI + 180) % 180;
    expect(group?.ellipses?.centroid.planeAngle).toBeCloseTo(direction, 6);
  });
});
