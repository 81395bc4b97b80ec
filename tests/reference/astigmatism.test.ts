import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inducedAstigmatism } from '../../server/src/note/calculations/astigmatism/induced.ts';
import { meridionalPolarValue } from '../../server/src/note/calculations/astigmatism/polar-values.ts';
import { cornealPowerFromRadius } from '../../server/src/note/calculations/keratometry/radius.ts';
import { incisionMeridian } from '../../server/src/note/calculations/position/incision.ts';
import { positionOfSite } from '../../server/src/note/calculations/position/site.ts';
import { powerAtMeridian } from '../../server/src/note/calculations/refraction/power-at-meridian.ts';
import { powerVector } from '../../server/src/note/calculations/refraction/power-vector.ts';
import { annullingRotation, rotationEffect, rotationShare } from '../../server/src/note/calculations/toric/rotation.ts';
import { answer } from '../calculations/answer.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

// ISO 8429:1986 (text seen): one dial for both eyes, as seen facing the patient, 0 at the right-hand side of the viewer,
// growing counter-clockwise; axes 0 to 180, and 0 is written 180.
describe('ISO 8429, graduated dial scale', () => {
  test('the right-hand side of a viewer is the nasal side of a right eye and the temporal side of a left eye', () => {
    expect(answer(positionOfSite({ site: 'nasal', eye: 'right' }))).toBe(0);
    expect(answer(positionOfSite({ site: 'temporal', eye: 'left' }))).toBe(0);
  });
  test('90 is up and 270 down in both eyes', () => {
    for (const eye of ['right', 'left'] as const) {
      expect(answer(positionOfSite({ site: 'superior', eye }))).toBe(90);
      expect(answer(positionOfSite({ site: 'inferior', eye }))).toBe(270);
    }
  });
  test('the horizontal axis is written 180', () => {
    for (const position of [0, 180, 360]) expect(answer(incisionMeridian({ position }))).toBe(180);
  });
});

// ISO 10343, ophthalmometers (from memory): index 1.3375, chosen so that 7.5 mm is 45 D.
test('ISO 10343: 7.5 mm is 45 D', () => {
  expect(answer(cornealPowerFromRadius({ radiusMm: 7.5 }))).toBe(45);
});

// Thibos, Wheeler, Horner 1997 (abstract seen): any lens is a sphere M and two crossed cylinders J0 and J45; the power
// along a meridian follows the sine-squared law.
test('Thibos 1997: the three components together have the power of the lens along every meridian', () => {
  const refraction = fc.record({ sphere: number(-20, 8), cylinder: number(-5, 5), axis: number(0, 180) });
  fc.assert(
    fc.property(refraction, number(0, 180), (given, meridian) => {
      const { m, j0, j45 } = answer(powerVector({ refraction: given }));
      const crossed = m + j0 * Math.cos(radians(2 * meridian)) + j45 * Math.sin(radians(2 * meridian));
      expect(answer(powerAtMeridian({ refraction: given, meridian }))).toBeCloseTo(crossed, 9);
    }),
  );
});

// Jaffe & Clayman 1975 (from memory): law of cosines on doubled angles.
test('Jaffe & Clayman 1975: SIA² = A1² + A2² - 2 A1 A2 cos 2 (b1 - b2)', () => {
  fc.assert(
    fc.property(number(0, 6), number(0, 180), number(0, 6), number(0, 180), (a1, b1, a2, b2) => {
      const { magnitude } = answer(
        inducedAstigmatism({ before: { magnitude: a1, axis: b1 }, after: { magnitude: a2, axis: b2 } }),
      );
      const square = a1 * a1 + a2 * a2 - 2 * a1 * a2 * Math.cos(radians(2 * (b1 - b2)));
      expect(magnitude * magnitude).toBeCloseTo(square, 9);
    }),
  );
});

// Naeser, Behrens, Naeser 1994 (abstract seen): KP = M [sin²((a + 90) - m) - cos²((a + 90) - m)].
test('Naeser 1994: the polar value as the abstract writes it', () => {
  fc.assert(
    fc.property(number(0, 6), number(0, 180), number(0, 180), (magnitude, axis, reference) => {
      const angle = radians(axis + 90 - reference);
      const printed = magnitude * (Math.sin(angle) ** 2 - Math.cos(angle) ** 2);
      expect(answer(meridionalPolarValue({ corneal: { magnitude, axis }, reference }))).toBeCloseTo(printed, 9);
    }),
  );
});

// Felipe et al. 2011 (abstract seen): one third is left at 10 degrees when lens and cornea are equal; the effect is
// annulled at the angle given by r / 2, r = lens / cornea; little changes when the cornea exceeds the lens.
const changeByFive = (lensD: number) =>
  answer(rotationEffect({ cornealD: 3, lensD, rotation: 5 })) -
  answer(rotationEffect({ cornealD: 3, lensD, rotation: 0 }));

describe('Felipe 2011, rotation of toric lenses', () => {
  test('one third at 10 degrees, all of it at 30', () => {
    expect(answer(rotationShare({ rotation: 10 }))).toBeCloseTo(1 / 3, 1);
    expect(answer(rotationShare({ rotation: 30 }))).toBeCloseTo(1, 12);
  });
  test('at the annulling angle as much is left as the cornea had', () => {
    for (const lensD of [0.5, 1, 2, 3.5]) {
      const rotation = answer(annullingRotation({ cornealD: 2, lensD }));
      expect(answer(rotationEffect({ cornealD: 2, lensD, rotation }))).toBeCloseTo(2, 9);
    }
  });
  test('five degrees change less when the cornea exceeds the lens', () => {
    expect(changeByFive(1.5)).toBeLessThan(changeByFive(3) / 3);
  });
});
