// Cross-check with a general-purpose matrix library: dioptric power matrices (Long 1976) against the vector methods.
// A sphere and cylinder is the matrix [[S + C sin²a, -C sin a cos a], [-C sin a cos a, S + C cos²a]].
import * as fc from 'fast-check';
import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { inducedAstigmatism } from '../../server/src/note/calculations/astigmatism/induced.ts';
import type { Refraction, Vector } from '../../server/src/note/calculations/quantities.ts';
import { powerVector } from '../../server/src/note/calculations/refraction/power-vector.ts';
import { refractionAtCornea } from '../../server/src/note/calculations/refraction/vertex.ts';
import { refractiveChange } from '../../server/src/note/calculations/refraction/whole-change.ts';
import { lensPlaneCylinder } from '../../server/src/note/calculations/toric/lens-plane.ts';
import { residualAstigmatism } from '../../server/src/note/calculations/toric/residual.ts';
import { answer } from '../calculations/answer.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const IDENTITY = Matrix.eye(2);

function matrixOf({ sphere, cylinder, axis }: Refraction): Matrix {
  const [s, c] = [Math.sin(radians(axis ?? 0)), Math.cos(radians(axis ?? 0))];
  const off = -cylinder * s * c;
  return new Matrix([
    [sphere + cylinder * s * s, off],
    [off, sphere + cylinder * c * c],
  ]);
}

/** A cornea with a steep meridian is a plus cylinder whose axis lies across it. */
const corneaOf = ({ magnitude, axis }: Vector): Matrix =>
  matrixOf({ sphere: 0, cylinder: magnitude, axis: (axis ?? 0) + 90 });

/** Cylinder and steep meridian from the eigenvalues and eigenvectors of a symmetric matrix. */
function steepest(matrix: Matrix): { magnitude: number; axis: number; greater: number } {
  const { realEigenvalues: values, eigenvectorMatrix: vectors } = new EigenvalueDecomposition(matrix, {
    assumeSymmetric: true,
  });
  const [first = NaN, second = NaN] = values;
  const column = first > second ? 0 : 1;
  const angle = (Math.atan2(vectors.get(1, column), vectors.get(0, column)) * 180) / Math.PI;
  return { magnitude: Math.abs(first - second), axis: ((angle % 180) + 180) % 180, greater: Math.max(first, second) };
}

function sameAxis(actual: number | null, expected: number): void {
  const apart = Math.abs((((actual ?? NaN) - expected + 90 + 360) % 180) - 90);
  expect(apart).toBeLessThan(1e-4);
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const refraction = fc.record({ sphere: number(-20, 8), cylinder: number(-5, 5), axis: number(0.1, 180) });
const cylinder = fc.record({ magnitude: number(0.1, 5), axis: number(0.1, 180) });

describe('vectors and dioptric power matrices say the same', () => {
  test('power vectors: M is half the trace, J0 half the difference, J45 the element beside', () => {
    fc.assert(
      fc.property(refraction, (given) => {
        const f = matrixOf(given);
        const { m, j0, j45 } = answer(powerVector({ refraction: given }));
        expect(m).toBeCloseTo(f.trace() / 2, 9);
        expect(j0).toBeCloseTo((f.get(0, 0) - f.get(1, 1)) / 2, 9);
        expect(j45).toBeCloseTo(f.get(0, 1), 9);
      }),
    );
  });

  test('induced astigmatism is the difference of two corneas', () => {
    fc.assert(
      fc.property(cylinder, cylinder, (before, after) => {
        const change = steepest(Matrix.sub(corneaOf(after), corneaOf(before)));
        const vector = answer(inducedAstigmatism({ before, after }));
        expect(vector.magnitude).toBeCloseTo(change.magnitude, 9);
        if (change.magnitude > 0.01) sameAxis(vector.axis, change.axis);
      }),
    );
  });

  test('moving to the cornea is (I - dF)⁻¹ F', () => {
    fc.assert(
      fc.property(refraction, number(0, 15), (given, vertexMm) => {
        const f = matrixOf(given);
        const there = inverse(Matrix.sub(IDENTITY, Matrix.mul(f, vertexMm / 1000))).mmul(f);
        const ours = matrixOf(answer(refractionAtCornea({ refraction: given, vertexMm })));
        expect(Matrix.sub(ours, there).norm()).toBeLessThan(1e-9);
      }),
    );
  });

  test('the whole refractive change, sphere included', () => {
    fc.assert(
      fc.property(refraction, refraction, (before, after) => {
        const atCornea = (given: Refraction) => {
          const f = matrixOf(given);
          return inverse(Matrix.sub(IDENTITY, Matrix.mul(f, 0.012))).mmul(f);
        };
        const change = Matrix.sub(atCornea(after), atCornea(before));
        const ours = answer(refractiveChange({ before, after, vertexMm: 12 }));
        expect(Matrix.sub(matrixOf(ours), change).norm()).toBeLessThan(1e-9);
        expect(ours.sphere).toBeCloseTo(steepest(change).greater, 9);
      }),
    );
  });

  test('what a turned toric lens leaves', () => {
    fc.assert(
      fc.property(cylinder, number(0.1, 5), number(0.1, 180), (corneal, lensCylinderD, markAxis) => {
        const lens = matrixOf({ sphere: 0, cylinder: lensCylinderD, axis: markAxis });
        const left = steepest(Matrix.add(corneaOf(corneal), lens));
        const ours = answer(residualAstigmatism({ corneal, lensCylinderD, markAxis }));
        expect(ours.magnitude).toBeCloseTo(left.magnitude, 9);
        if (left.magnitude > 0.01) sameAxis(ours.axis, left.axis);
      }),
    );
  });

  test('cylinder at the plane of the lens is the vergence matrix carried there', () => {
    fc.assert(
      fc.property(number(39, 46), number(0.1, 4), number(3.5, 7), (flatD, astigmatism, lensPositionMm) => {
        const steepD = flatD + astigmatism;
        const cornea = matrixOf({ sphere: flatD, cylinder: astigmatism, axis: 20 });
        const reduced = Matrix.mul(IDENTITY, lensPositionMm / 1336);
        const atLens = inverse(Matrix.sub(inverse(cornea), reduced));
        expect(answer(lensPlaneCylinder({ flatD, steepD, lensPositionMm }))).toBeCloseTo(steepest(atLens).magnitude, 8);
      }),
    );
  });
});
