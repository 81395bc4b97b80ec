import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flatteningEffect, torque } from '../../server/src/note/calculations/astigmatism/at-the-incision.ts';
import {
  expectedCornealAstigmatism,
  expectedInducedAstigmatism,
} from '../../server/src/note/calculations/astigmatism/expected.ts';
import { inducedAstigmatism } from '../../server/src/note/calculations/astigmatism/induced.ts';
import {
  meridionalPolarValue,
  torsionalPolarValue,
} from '../../server/src/note/calculations/astigmatism/polar-values.ts';
import {
  angleOfError,
  differenceVector,
  targetInducedAstigmatism,
} from '../../server/src/note/calculations/astigmatism/treatment.ts';
import { coveredShare } from '../../server/src/note/calculations/capsulotomy/overlap.ts';
import { diameterUnderMark, markForDiameter } from '../../server/src/note/calculations/capsulotomy/corneal-mark.ts';
import {
  cornealPowerFromRadius,
  cornealRadiusFromPower,
} from '../../server/src/note/calculations/keratometry/radius.ts';
import type { LensFormula, MeasuredEye } from '../../server/src/note/calculations/lens-power/formula.ts';
import { haigis } from '../../server/src/note/calculations/lens-power/haigis.ts';
import { hofferQ } from '../../server/src/note/calculations/lens-power/hoffer-q.ts';
import { holladay1 } from '../../server/src/note/calculations/lens-power/holladay-1.ts';
import { srkT } from '../../server/src/note/calculations/lens-power/srk-t.ts';
import { t2 } from '../../server/src/note/calculations/lens-power/t2.ts';
import { clockHourOfPosition, positionOfClockHour } from '../../server/src/note/calculations/position/clock-hour.ts';
import {
  positionFromSurgeonsView,
  surgeonsViewHour,
} from '../../server/src/note/calculations/position/surgeons-view.ts';
import type { Vector } from '../../server/src/note/calculations/quantities.ts';
import { powerVector, refractionFromPowerVector } from '../../server/src/note/calculations/refraction/power-vector.ts';
import { transposition } from '../../server/src/note/calculations/refraction/transposition.ts';
import { powerAtCornea, powerAtSpectacles } from '../../server/src/note/calculations/refraction/vertex.ts';
import { reviewDate } from '../../server/src/note/calculations/time/review-date.ts';
import { daysAfterOperation } from '../../server/src/note/calculations/time/reviews.ts';
import { residualAstigmatism } from '../../server/src/note/calculations/toric/residual.ts';
import { rotationEffect } from '../../server/src/note/calculations/toric/rotation.ts';
import { answer } from '../calculations/answer.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const cylinder = number(0.05, 6).chain((magnitude) => number(0, 180).map((axis): Vector => ({ magnitude, axis })));
const axis = number(0, 180);
const refraction = fc.record({ sphere: number(-25, 12), cylinder: number(-6, 6), axis });

/** How far two cylinders are apart in the double-angle plane, where 180 and 0 are one place. */
const apart = (a: Vector, b: Vector): number => answer(inducedAstigmatism({ before: a, after: b })).magnitude;
const turned = (vector: Vector, by: number): Vector => ({ ...vector, axis: ((vector.axis ?? 0) + by) % 180 });

describe('refraction', () => {
  test('transposed twice is the refraction itself, and transposing changes no power vector', () => {
    fc.assert(
      fc.property(refraction, (given) => {
        const once = answer(transposition({ refraction: given }));
        const [a, b] = [given, once].map((one) => answer(powerVector({ refraction: one })));
        expect(b?.m).toBeCloseTo(a?.m ?? NaN, 9);
        expect(b?.j0).toBeCloseTo(a?.j0 ?? NaN, 9);
        expect(b?.j45).toBeCloseTo(a?.j45 ?? NaN, 9);
        const twice = answer(transposition({ refraction: once }));
        expect(twice.sphere).toBeCloseTo(given.sphere, 9);
        expect(twice.cylinder).toBeCloseTo(given.cylinder, 9);
      }),
    );
  });
  test('a power vector goes back to the refraction it came from', () => {
    fc.assert(
      fc.property(refraction, (given) => {
        const vector = answer(powerVector({ refraction: given }));
        const back = answer(powerVector({ refraction: answer(refractionFromPowerVector(vector)) }));
        for (const key of ['m', 'j0', 'j45'] as const) expect(back[key]).toBeCloseTo(vector[key], 9);
      }),
    );
  });
  test('to the cornea and back to the spectacles', () => {
    fc.assert(
      fc.property(number(-25, 20), number(0, 16), (powerD, vertexMm) => {
        const there = answer(powerAtCornea({ powerD, vertexMm }));
        expect(answer(powerAtSpectacles({ powerD: there, vertexMm }))).toBeCloseTo(powerD, 9);
      }),
    );
  });
  test("radius and power are each other's inverse under one index", () => {
    fc.assert(
      fc.property(number(5.7, 11), number(1.33, 1.38), (radiusMm, index) => {
        const powerD = answer(cornealPowerFromRadius({ radiusMm, index }));
        expect(answer(cornealRadiusFromPower({ powerD, index }))).toBeCloseTo(radiusMm, 9);
      }),
    );
  });
});

describe('astigmatism vectors', () => {
  test('turning the whole eye turns every vector and changes no magnitude, angle or index', () => {
    fc.assert(
      fc.property(cylinder, cylinder, cylinder, axis, (before, target, after, by) => {
        const of = (turn: number) => {
          const [pre, aim, post] = [turned(before, turn), turned(target, turn), turned(after, turn)];
          return {
            induced: answer(inducedAstigmatism({ before: pre, after: post })),
            aimed: answer(targetInducedAstigmatism({ before: pre, target: aim })),
            left: answer(differenceVector({ target: aim, after: post })),
          };
        };
        const still = of(0);
        const moved = of(by);
        for (const key of ['induced', 'aimed', 'left'] as const) {
          expect(moved[key].magnitude).toBeCloseTo(still[key].magnitude, 9);
          if (still[key].magnitude > 1e-3) expect(apart(moved[key], turned(still[key], by))).toBeLessThan(1e-6);
        }
        if (still.induced.magnitude < 0.01 || still.aimed.magnitude < 0.01) return;
        const error = Math.abs(answer(angleOfError(still)));
        // At 90 degrees the sign is a matter of rounding.
        expect(Math.abs(answer(angleOfError(moved)))).toBeCloseTo(error, 5);
        const meridian = still.aimed.axis ?? 0;
        const flattened = answer(flatteningEffect({ induced: still.induced, meridian }));
        const flattenedThere = answer(flatteningEffect({ induced: moved.induced, meridian: meridian + by }));
        expect(flattenedThere).toBeCloseTo(flattened, 6);
      }),
    );
  });
  test('flattening and torque together are the whole change', () => {
    fc.assert(
      fc.property(cylinder, axis, (induced, meridian) => {
        const given = { induced, meridian };
        expect(Math.hypot(answer(flatteningEffect(given)), answer(torque(given)))).toBeCloseTo(induced.magnitude, 9);
      }),
    );
  });
  test('flattening and torque put in at an incision are read back there', () => {
    fc.assert(
      fc.property(number(-2, 2), number(-2, 2), number(0, 359), (flatteningD, torqueD, incision) => {
        const induced = answer(expectedInducedAstigmatism({ flatteningD, torqueD, incision }));
        expect(answer(flatteningEffect({ induced, meridian: incision }))).toBeCloseTo(flatteningD, 6);
        expect(answer(torque({ induced, meridian: incision }))).toBeCloseTo(torqueD, 6);
      }),
    );
  });
  test('what was expected, once it has happened, is what was induced', () => {
    fc.assert(
      fc.property(cylinder, cylinder, (before, induced) => {
        const after = answer(expectedCornealAstigmatism({ before, induced }));
        expect(apart(answer(inducedAstigmatism({ before, after })), induced)).toBeLessThan(1e-6);
      }),
    );
  });
  test('polar values keep the magnitude', () => {
    fc.assert(
      fc.property(cylinder, axis, (corneal, reference) => {
        const given = { corneal, reference };
        const length = Math.hypot(answer(meridionalPolarValue(given)), answer(torsionalPolarValue(given)));
        expect(length).toBeCloseTo(corneal.magnitude, 9);
      }),
    );
  });
  test('a turned toric lens leaves what the vectors say', () => {
    fc.assert(
      fc.property(cylinder, number(0.05, 6), number(-90, 90), (corneal, lensD, rotation) => {
        const markAxis = (corneal.axis ?? 0) + rotation;
        const { magnitude } = answer(residualAstigmatism({ corneal, lensCylinderD: lensD, markAxis }));
        expect(answer(rotationEffect({ cornealD: corneal.magnitude, lensD, rotation }))).toBeCloseTo(magnitude, 6);
      }),
    );
  });
});

describe('positions', () => {
  test("the surgeon's view goes there and back, as the anatomical clock does", () => {
    fc.assert(
      fc.property(number(0.01, 12), number(0, 359), (hour, seat) => {
        const position = answer(positionFromSurgeonsView({ hour, seat }));
        expect(answer(surgeonsViewHour({ position, seat }))).toBeCloseTo(hour, 6);
        expect(answer(clockHourOfPosition({ position: answer(positionOfClockHour({ hour })) }))).toBeCloseTo(hour, 6);
      }),
    );
  });
});

const eye = { axialLengthMm: number(20, 36), meanKeratometryD: number(38, 48) };
const formulas = [
  { formula: srkT, constants: { aConstant: 118.4 }, other: { aConstant: 114.4 } },
  { formula: t2, constants: { aConstant: 118.4 }, other: { aConstant: 114.4 } },
  { formula: holladay1, constants: { surgeonFactor: 1.45 }, other: { surgeonFactor: -0.5 } },
  { formula: hofferQ, constants: { pAcd: 5.2 }, other: { pAcd: 3 } },
  {
    formula: haigis,
    constants: { a0: 1.527, a1: 0.4, a2: 0.1, chamberDepthMm: 3.4 },
    other: { a0: -1, a1: 0.4, a2: 0.1, chamberDepthMm: 3.4 },
  },
].map(({ formula, constants, other }) => ({
  title: formula.title,
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- five formulas with different constants in one list
  formula: formula as unknown as LensFormula<MeasuredEye>,
  constants,
  other,
}));

describe.each(formulas)('$title', ({ formula, constants, other }) => {
  const powerOf = (given: MeasuredEye, targetD: number, set: object = constants) =>
    answer(formula.power({ ...given, ...set, targetD }));

  test('the refraction of the power for a target is the target, to 1e-6', () => {
    fc.assert(
      fc.property(fc.record(eye), number(-8, 3), (given, targetD) => {
        const powerD = powerOf(given, targetD);
        fc.pre(powerD >= -30 && powerD <= 60);
        const left = answer(formula.refraction({ ...given, ...constants, powerD }));
        expect(Math.abs(left - targetD)).toBeLessThan(1e-6);
      }),
    );
  });
  test('power falls with a more hyperopic target and with length', () => {
    fc.assert(
      fc.property(fc.record(eye), number(-6, 2), (given, targetD) => {
        const power = powerOf(given, targetD);
        expect(powerOf(given, targetD + 0.25)).toBeLessThan(power);
        expect(powerOf({ ...given, axialLengthMm: given.axialLengthMm + 0.1 }, targetD)).toBeLessThan(power);
      }),
    );
  });
  test('power falls with keratometry, in SRK/T up to where its corneal height has a cusp', () => {
    const steepest = formula.slug === 'srk-t' ? 44 : 48;
    const upTo = fc.record({ ...eye, meanKeratometryD: number(38, steepest - 0.1) });
    fc.assert(
      fc.property(upTo, number(-6, 2), (given, targetD) => {
        const steeper = { ...given, meanKeratometryD: given.meanKeratometryD + 0.1 };
        expect(powerOf(steeper, targetD)).toBeLessThan(powerOf(given, targetD));
      }),
    );
  });
  test('refraction falls as the power of the lens grows', () => {
    fc.assert(
      fc.property(fc.record(eye), number(-10, 30), (given, powerD) => {
        const at = (power: number) => answer(formula.refraction({ ...given, ...constants, powerD: power }));
        expect(at(powerD + 0.5)).toBeLessThan(at(powerD));
      }),
    );
  });
  test('whether a power is plus or minus does not depend on the constants', () => {
    fc.assert(
      fc.property(fc.record(eye), number(-6, 2), (given, targetD) => {
        const power = powerOf(given, targetD);
        fc.pre(Math.abs(power) > 1e-6);
        expect(Math.sign(powerOf(given, targetD, other))).toBe(Math.sign(power));
      }),
    );
  });
});

describe('capsulotomy', () => {
  test('the covered share lies between 0 and 1 and falls with the offset', () => {
    fc.assert(
      fc.property(number(3, 7), number(5, 7), number(0, 2), (capsulotomyMm, opticMm, offsetMm) => {
        const share = answer(coveredShare({ capsulotomyMm, opticMm, offsetMm }));
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
        // A capsulotomy larger than the optic meets it only once it is off centre.
        fc.pre(capsulotomyMm <= opticMm);
        const further = answer(coveredShare({ capsulotomyMm, opticMm, offsetMm: offsetMm + 0.1 }));
        expect(further).toBeLessThanOrEqual(share + 1e-9);
      }),
    );
  });
  test('the mark for a diameter encloses that diameter', () => {
    fc.assert(
      fc.property(number(2, 5), number(38, 48), number(3, 6), (depthMm, meanKeratometryD, wantedMm) => {
        const markMm = answer(markForDiameter({ depthMm, meanKeratometryD, wantedMm }));
        expect(answer(diameterUnderMark({ depthMm, meanKeratometryD, markMm }))).toBeCloseTo(wantedMm, 9);
      }),
    );
  });
});

test('a review so many days on is that many days after the operation', () => {
  fc.assert(
    fc.property(
      fc.date({ min: new Date('1990-01-01'), max: new Date('2090-12-31'), noInvalidDate: true }),
      fc.integer({ min: 0, max: 3650 }),
      (date, count) => {
        const operationDate = date.toISOString().slice(0, 10);
        const due = answer(reviewDate({ operationDate, count, interval: 'day' }));
        expect(answer(daysAfterOperation({ operationDate, visit: due }))).toBe(count);
      },
    ),
  );
});
