// The traps that computations of this field fall into; one test each, named after the trap.
import { describe, expect, test } from 'vitest';
import { acuityLogmarOfCategory } from '../../server/src/note/calculations/acuity/logmar.ts';
import { expectedInducedAstigmatism } from '../../server/src/note/calculations/astigmatism/expected.ts';
import { inducedAstigmatism } from '../../server/src/note/calculations/astigmatism/induced.ts';
import { angleOfError } from '../../server/src/note/calculations/astigmatism/treatment.ts';
import { coveredShare, largestOffset, leastOverlap } from '../../server/src/note/calculations/capsulotomy/overlap.ts';
import { displayAxis, displayVector } from '../../server/src/note/calculations/display.ts';
import { cornealAstigmatism } from '../../server/src/note/calculations/keratometry/corneal-astigmatism.ts';
import { meanKeratometry } from '../../server/src/note/calculations/keratometry/mean.ts';
import { cornealPowerFromRadius } from '../../server/src/note/calculations/keratometry/radius.ts';
import { adjustedAxialLength } from '../../server/src/note/calculations/lens-power/axial-length-adjustment.ts';
import { haigis } from '../../server/src/note/calculations/lens-power/haigis.ts';
import { hofferQ } from '../../server/src/note/calculations/lens-power/hoffer-q.ts';
import { powerWithMinusConstants } from '../../server/src/note/calculations/lens-power/minus-power.ts';
import { srkT } from '../../server/src/note/calculations/lens-power/srk-t.ts';
import { clockHourOfPosition, positionOfClockHour } from '../../server/src/note/calculations/position/clock-hour.ts';
import { incisionMeridian, incisionPosition } from '../../server/src/note/calculations/position/incision.ts';
import { positionOfSite, siteOfPosition, SITES } from '../../server/src/note/calculations/position/site.ts';
import {
  positionFromSurgeonsView,
  surgeonsViewHour,
} from '../../server/src/note/calculations/position/surgeons-view.ts';
import { cornealPowerVector, powerVector } from '../../server/src/note/calculations/refraction/power-vector.ts';
import { predictionError } from '../../server/src/note/calculations/refraction/prediction-error.ts';
import { sphericalEquivalent } from '../../server/src/note/calculations/refraction/spherical-equivalent.ts';
import { transposition } from '../../server/src/note/calculations/refraction/transposition.ts';
import { refractionAtCornea } from '../../server/src/note/calculations/refraction/vertex.ts';
import { cornealPlaneCylinder, toricRatio } from '../../server/src/note/calculations/toric/lens-plane.ts';
import { residualAstigmatism } from '../../server/src/note/calculations/toric/residual.ts';
import { answer, cautions, reason } from './answer.ts';

const nothing = { magnitude: 0, axis: null };

describe('trap 1: axis 0 and axis 180 are the same axis, written 180', () => {
  test('an incision at 0 lies on the meridian 180 and keeps its position 0', () => {
    expect(answer(incisionMeridian({ position: 0 }))).toBe(180);
    expect(answer(incisionPosition({ position: 360 }))).toBe(0);
  });
  test('a result that falls on the horizontal is 180', () => {
    const before = { magnitude: 1.5, axis: 90 };
    const change = answer(inducedAstigmatism({ before, after: { magnitude: 0.75, axis: 90 } }));
    expect(change.axis).toBe(180);
    expect(answer(transposition({ refraction: { sphere: 1, cylinder: -1, axis: 90 } })).axis).toBe(180);
  });
  test('axes given as 0 and as 180 compute the same', () => {
    const [zero, straight] = [0, 180].map((axis) =>
      answer(powerVector({ refraction: { sphere: -2, cylinder: -1, axis } })),
    );
    expect(zero?.j0).toBeCloseTo(straight?.j0 ?? NaN, 12);
  });
  test('display never shows 0, nor an axis that is only rounding noise', () => {
    expect(displayAxis(0.4)).toBe('180°');
    expect(displayAxis(179.6)).toBe('180°');
    expect(displayVector({ magnitude: 0.004, axis: 37 })).toBe('0.00 D, no axis');
  });
});

describe('trap 2: a zero cylinder has no axis', () => {
  test('no change has null for its axis, never 0 or 180', () => {
    const same = { magnitude: 1.25, axis: 33 };
    expect(answer(inducedAstigmatism({ before: same, after: { magnitude: 1.25, axis: 213 } }))).toEqual(nothing);
  });
  test('equal powers have no steep meridian', () => {
    const k = { power: 43, axis: 90 };
    expect(answer(cornealAstigmatism({ k1: k, k2: { power: 43, axis: 180 } }))).toEqual(nothing);
  });
  test('the angle between a change and no change is refused', () => {
    expect(reason(angleOfError({ induced: nothing, aimed: { magnitude: 1, axis: 10 } }))).toContain('no angle');
  });
  test('a cylinder without an axis is refused, not taken as 0', () => {
    const before = { magnitude: 1, axis: null };
    expect(reason(inducedAstigmatism({ before, after: nothing }))).toContain('has a cylinder but no axis');
  });
});

describe('trap 3: the sites of a left eye are mirrored', () => {
  test('temporal is 180 in a right and 0 in a left eye; superior is 90 in both', () => {
    expect(answer(positionOfSite({ site: 'temporal', eye: 'right' }))).toBe(180);
    expect(answer(positionOfSite({ site: 'temporal', eye: 'left' }))).toBe(0);
    for (const eye of ['right', 'left'] as const) expect(answer(positionOfSite({ site: 'superior', eye }))).toBe(90);
  });
  test("3 o'clock is nasal in a right and temporal in a left eye", () => {
    const position = answer(positionOfClockHour({ hour: 3 }));
    expect(answer(siteOfPosition({ position, eye: 'right' }))).toBe('nasal');
    expect(answer(siteOfPosition({ position, eye: 'left' }))).toBe('temporal');
  });
  test('every word comes back from its own position, in both eyes', () => {
    for (const eye of ['right', 'left'] as const)
      for (const site of SITES) {
        const position = answer(positionOfSite({ site, eye }));
        expect(answer(siteOfPosition({ position, eye }))).toBe(site);
      }
  });
});

describe("trap 4: the surgeon's clock is not the anatomical clock", () => {
  test.each([
    ['seated superiorly', 90, 12, 6],
    ['seated temporally at a right eye', 180, 12, 9],
    ['seated temporally at a left eye', 0, 12, 3],
  ])('%s', (_seat, seat, anatomical, seen) => {
    const position = answer(positionOfClockHour({ hour: anatomical }));
    expect(answer(surgeonsViewHour({ position, seat }))).toBe(seen);
    expect(answer(positionFromSurgeonsView({ hour: seen, seat }))).toBe(position);
  });
  test('twelve is 12, never 0', () => {
    expect(answer(clockHourOfPosition({ position: 90 }))).toBe(12);
  });
});

describe('trap 5: keratometry in millimetres, and the mean of it', () => {
  test('the mean is taken in dioptres, not in millimetres', () => {
    const k1D = answer(cornealPowerFromRadius({ radiusMm: 7.5 }));
    const k2D = answer(cornealPowerFromRadius({ radiusMm: 8 }));
    expect(answer(meanKeratometry({ k1D, k2D }))).toBeCloseTo(43.594, 3);
    expect(answer(cornealPowerFromRadius({ radiusMm: 7.75 }))).toBeCloseTo(43.548, 3);
  });
  test('a radius handed in as a power is refused', () => {
    expect(reason(meanKeratometry({ k1D: 7.5, k2D: 8 }))).toContain('outside 30 to 70 D');
  });
});

test('trap 6: J0 has one sign for a cornea and the other for a correcting lens', () => {
  const cornea = answer(cornealPowerVector({ k1D: 42, k2D: 44, steepMeridian: 90 }));
  // The lens that corrects this cornea: minus cylinder with its axis along the flat meridian.
  const lens = answer(powerVector({ refraction: { sphere: 0, cylinder: -2, axis: 180 } }));
  expect(cornea.j0).toBeCloseTo(-1, 12);
  expect(lens.j0).toBeCloseTo(1, 12);
});

describe('trap 9: minus powers and their target', () => {
  const eye = { axialLengthMm: 33.5, meanKeratometryD: 42, chamberDepthMm: 3.7, a1: 0.4, a2: 0.1 };
  test('a minus power comes out as one, with a caution', () => {
    const outcome = haigis.power({ ...eye, a0: 1.527, targetD: 0 });
    expect(answer(outcome)).toBeLessThan(0);
    expect(cautions(outcome)).toContain('constants made for plus lenses do not apply');
  });
  test('constants for minus powers decide the amount, ordinary ones the sign', () => {
    const ordinary = haigis.power({ ...eye, a0: 2.77, targetD: 0 });
    const minus = haigis.power({ ...eye, a0: -1.73, constantForMinus: true, targetD: 0 });
    expect(Math.sign(answer(ordinary))).toBe(Math.sign(answer(minus)));
    const chosen = powerWithMinusConstants(ordinary, minus);
    expect(answer(chosen)).toBe(answer(minus));
    expect(cautions(chosen)).toContain('Computed with the constant for minus powers');
    expect(powerWithMinusConstants(haigis.power({ ...eye, a0: 2.77, targetD: -3 }), minus)).toMatchObject({ ok: true });
  });
  test('a plus power is left with the ordinary constants', () => {
    const plus = haigis.power({ ...eye, a0: 2.77, targetD: -4 });
    expect(answer(plus)).toBeGreaterThan(0);
    expect(powerWithMinusConstants(plus, haigis.power({ ...eye, a0: -1.73, targetD: -4 }))).toBe(plus);
  });
  test('a more myopic target asks for a higher power, below zero too', () => {
    const powers = [-1, 0].map((targetD) => answer(haigis.power({ ...eye, a0: 1.527, targetD })));
    expect(powers[0]).toBeGreaterThan(powers[1] ?? NaN);
  });
});

const adjusted2018 = (axialLengthMm: number, formula: 'holladay-1' | 'srk-t') =>
  adjustedAxialLength({ axialLengthMm, formula, regression: 'wang-koch-2018' });

describe('trap 10: which side the threshold of an axial-length adjustment falls on', () => {
  test('the limit itself is not adjusted; just above it is, with the known jump', () => {
    expect(reason(adjusted2018(26.5, 'holladay-1'))).toContain('over 26.5 mm');
    expect(answer(adjusted2018(26.5001, 'holladay-1')) - 26.5001).toBeCloseTo(-0.148, 2);
    expect(reason(adjusted2018(27, 'srk-t'))).toContain('over 27 mm');
    expect(answer(adjusted2018(27.0001, 'srk-t')) - 27.0001).toBeCloseTo(-0.0996, 2);
  });
  test('a formula the adjustment was not published for is refused', () => {
    const given = { axialLengthMm: 30, formula: 'haigis', regression: 'wang-koch-2018' } as const;
    expect(reason(adjustedAxialLength(given))).toContain('published for other formulas');
  });
});

const clamped = (axialLengthMm: number, meanKeratometryD: number) =>
  cautions(srkT.power({ axialLengthMm, meanKeratometryD, aConstant: 118.4, targetD: 0 })).includes('clamped');

describe('trap 11: SRK/T clamps in long steep eyes', () => {
  test.each([
    [29.88, 46],
    [26.29, 48],
    [23.99, 50],
  ])('from %s mm at %s D, and not before', (length, keratometry) => {
    expect(clamped(length - 0.02, keratometry)).toBe(false);
    expect(clamped(length + 0.02, keratometry)).toBe(true);
  });
  test('just before the clamp its power rises with keratometry, as no eye does', () => {
    const [before, after] = [47.95, 48.03].map((meanKeratometryD) =>
      answer(srkT.power({ axialLengthMm: 26.16, meanKeratometryD, aConstant: 118.4, targetD: 0 })),
    );
    expect(after).toBeGreaterThan(before ?? NaN);
  });
  test('never at 44 D below 40 mm', () => {
    for (let length = 20; length < 40; length += 0.5) expect(clamped(length, 44)).toBe(false);
  });
});

const hofferPosition = (axialLengthMm: number) =>
  answer(hofferQ.position({ axialLengthMm, meanKeratometryD: 43.5, pAcd: 5.2 }));

describe('trap 12: Hoffer Q reckons in degrees, and its length has limits', () => {
  test('the two branches meet at 23 mm, as they do only in degrees', () => {
    expect(Math.abs(hofferPosition(23.000001) - hofferPosition(23))).toBeLessThan(0.0013);
  });
  test('beyond 31 mm and below 18.5 mm the lens stays where it is, and it says so', () => {
    expect(hofferPosition(33)).toBe(hofferPosition(31));
    expect(hofferPosition(17)).toBe(hofferPosition(18.5));
    const far = hofferQ.power({ axialLengthMm: 33, meanKeratometryD: 43, pAcd: 5.2, targetD: 0 });
    expect(cautions(far)).toContain('31 mm');
  });
});

test('trap 13: Haigis without a measured chamber depth is refused, not supposed', () => {
  const eye = { axialLengthMm: 30, meanKeratometryD: 43, chamberDepthMm: NaN, a0: 1.527, a1: 0.4, a2: 0.1, targetD: 0 };
  expect(reason(haigis.power(eye))).toBe('anterior chamber depth is not a number');
});

test('trap 14: the cylinder on the box of a toric lens is at the lens, not at the cornea', () => {
  const ratio = answer(toricRatio({ flatD: 42, steepD: 44, lensPositionMm: 5.2 }));
  const lensCylinderD = answer(cornealPlaneCylinder({ lensCylinderD: 2.884898, ratio }));
  const corneal = { magnitude: 2, axis: 90 };
  expect(answer(residualAstigmatism({ corneal, lensCylinderD, markAxis: 90 })).magnitude).toBeLessThan(1e-5);
});

describe('trap 16: perception of light is not an acuity', () => {
  test('no measured scheme gives it a logMAR', () => {
    for (const scheme of ['schulze-bonsel-2006', 'lange-2009', 'holladay-1997'] as const)
      for (const category of ['PL', 'NPL'] as const)
        expect(reason(acuityLogmarOfCategory(category, scheme))).toContain('could not be measured');
  });
  test('the extrapolated scheme says what it is', () => {
    const outcome = acuityLogmarOfCategory('NPL', 'extrapolated');
    expect(answer(outcome)).toBe(3);
    expect(cautions(outcome)).toContain('extrapolations');
  });
});

describe('trap 17: a capsulotomy larger than the optic', () => {
  test('covers nothing when centred, and part of its edge when off centre', () => {
    expect(answer(coveredShare({ capsulotomyMm: 6.5, opticMm: 6, offsetMm: 0 }))).toBe(0);
    const share = answer(coveredShare({ capsulotomyMm: 6.2, opticMm: 6, offsetMm: 0.5 }));
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThan(0.5);
    expect(answer(leastOverlap({ capsulotomyMm: 6.5, opticMm: 6, offsetMm: 0 }))).toBe(-0.25);
  });
  test('has no offset that still covers', () => {
    expect(reason(largestOffset({ capsulotomyMm: 6.5, opticMm: 6 }))).toContain('never covered');
  });
  test('an edge that just meets the optic is covered all round', () => {
    expect(answer(coveredShare({ capsulotomyMm: 5.4, opticMm: 6, offsetMm: 0.3 }))).toBe(1);
  });
});

test('trap 18: plus- and minus-cylinder forms of one refraction compute the same', () => {
  const minus = { sphere: 0.5, cylinder: -1.25, axis: 160 };
  const plus = { sphere: -0.75, cylinder: 1.25, axis: 70 };
  expect(answer(sphericalEquivalent({ refraction: plus }))).toBe(answer(sphericalEquivalent({ refraction: minus })));
  const [a, b] = [minus, plus].map((refraction) => {
    const moved = answer(refractionAtCornea({ refraction, vertexMm: 12 }));
    return answer(powerVector({ refraction: moved }));
  });
  expect(a?.m).toBeCloseTo(b?.m ?? NaN, 12);
  expect(a?.j0).toBeCloseTo(b?.j0 ?? NaN, 12);
  expect(a?.j45).toBeCloseTo(b?.j45 ?? NaN, 12);
});

test('trap 19: the vertex distance matters and is always stated', () => {
  const refraction = { sphere: -14, cylinder: 0, axis: null };
  const at = (vertexMm: number) => answer(refractionAtCornea({ refraction, vertexMm })).sphere;
  expect(at(12.5) - at(12)).toBeCloseTo(0.0718, 3);
});

test('a prediction error is against the prediction for the lens implanted, signed as achieved - predicted', () => {
  expect(answer(predictionError({ achievedD: -1, predictedD: -0.3 }))).toBeCloseTo(-0.7, 12);
});

test('an incision that steepens is written as a negative flattening', () => {
  expect(answer(expectedInducedAstigmatism({ flatteningD: -0.2, incision: 90 }))).toEqual({
    magnitude: 0.2,
    axis: 90,
  });
});
