import { describe, expect, test } from 'vitest';
import { acuityLetters, acuityLogmar } from '../../server/src/note/calculations/acuity/logmar.ts';
import { capsularBagDiameter, capsularBagRegression } from '../../server/src/note/calculations/eye/capsular-bag.ts';
import { axialLengthClass } from '../../server/src/note/calculations/eye/axial-length-class.ts';
import { posteriorCapsuleRupture } from '../../server/src/note/calculations/eye/posterior-capsule-rupture.ts';
import { retinalDetachmentContext } from '../../server/src/note/calculations/eye/retinal-detachment.ts';
import { ringSizeAdvice } from '../../server/src/note/calculations/eye/ring-size.ts';
import { ruptureRisk } from '../../server/src/note/calculations/eye/rupture-risk.ts';
import { astigmatismKind } from '../../server/src/note/calculations/keratometry/astigmatism-kind.ts';
import { cornealAstigmatism } from '../../server/src/note/calculations/keratometry/corneal-astigmatism.ts';
import { cornealPowerFromRadius } from '../../server/src/note/calculations/keratometry/radius.ts';
import { formulaSpread } from '../../server/src/note/calculations/lens-power/spread.ts';
import { srkT } from '../../server/src/note/calculations/lens-power/srk-t.ts';
import { positionOfSite, type Site } from '../../server/src/note/calculations/position/site.ts';
import { ageAtOperation } from '../../server/src/note/calculations/time/age.ts';
import { operationDuration } from '../../server/src/note/calculations/time/duration.ts';
import { reviewDate } from '../../server/src/note/calculations/time/review-date.ts';
import { daysAfterOperation, overdueReviews } from '../../server/src/note/calculations/time/reviews.ts';
import { annullingRotation } from '../../server/src/note/calculations/toric/rotation.ts';
import { answer, cautions, reason } from './answer.ts';

describe('what is outside the range of an input is refused with both', () => {
  test('a value outside', () => {
    expect(reason(axialLengthClass({ axialLengthMm: 12 }))).toBe(
      'axial length 12 mm is outside 14 to 40 mm, the range this is computed for',
    );
  });
  test('no number, or an unknown word', () => {
    expect(reason(axialLengthClass({ axialLengthMm: NaN }))).toBe('axial length is not a number');
    const site: string = 'sideways';
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- what a caller without types may hand in
    expect(reason(positionOfSite({ site: site as Site, eye: 'left' }))).toContain('site is sideways; expected one of');
  });
  test('a constant that puts the lens in front of the cornea', () => {
    const eye = { axialLengthMm: 23, meanKeratometryD: 43, aConstant: 103, targetD: 0 };
    expect(reason(srkT.power(eye))).toMatch(/puts the lens -\d\.\d\d mm behind the cornea/);
  });
});

const kindAt = (axis: number, limitDegrees = 30) =>
  answer(astigmatismKind({ corneal: { magnitude: 1, axis }, limitDegrees }));

describe('keratometry', () => {
  const flat = { power: 42.5, axis: null };
  test('the steep meridian follows from the flat one, and needs one of the two', () => {
    expect(answer(cornealAstigmatism({ k1: { power: 42.5, axis: 5 }, k2: { power: 44, axis: null } })).axis).toBe(95);
    expect(reason(cornealAstigmatism({ k1: flat, k2: { power: 44, axis: null } }))).toContain('neither K1 nor K2');
  });
  test('meridians far from square are said', () => {
    const skew = cornealAstigmatism({ k1: { power: 42.5, axis: 5 }, k2: { power: 44, axis: 80 } });
    expect(cautions(skew)).toContain('15° from square');
  });
  test('another index is said', () => {
    expect(cautions(cornealPowerFromRadius({ radiusMm: 7.7, index: 1.3315 }))).toContain('1.3315 instead of 1.3375');
  });
  test('the limits of with and against the rule count as inside; another limit may be stated', () => {
    expect([kindAt(60), kindAt(120), kindAt(30), kindAt(150), kindAt(45), kindAt(180)]).toEqual([
      'with-the-rule',
      'with-the-rule',
      'against-the-rule',
      'against-the-rule',
      'oblique',
      'against-the-rule',
    ]);
    expect(kindAt(60, 22.5)).toBe('oblique');
    expect(reason(astigmatismKind({ corneal: { magnitude: 0, axis: null } }))).toContain('no astigmatism');
  });
});

const classAt = (axialLengthMm: number) => answer(axialLengthClass({ axialLengthMm }));

const freeDiameter = (axialLengthMm: number) => answer(ringSizeAdvice({ axialLengthMm })).free;

describe('eye', () => {
  test('the cut-offs of axial length', () => {
    expect([21.99, 22, 24.5, 24.51, 26, 26.01, 30, 30.01].map(classAt)).toEqual([
      'short',
      'average',
      'average',
      'medium long',
      'medium long',
      'long',
      'long',
      'extreme',
    ]);
  });
  test('the bag of a very long eye is not guessed; the bare regression is there for study', () => {
    const eye = { axialLengthMm: 30, meanKeratometryD: 43 };
    expect(reason(capsularBagDiameter(eye))).toContain('top at 26.4 mm');
    expect(answer(capsularBagRegression(eye))).toBeCloseTo(10.272, 6);
    expect(cautions(capsularBagRegression(eye))).toContain('Not an estimate');
  });
  test('ring sizes at their borders, and what a trial found in very long eyes', () => {
    expect([23.9, 24, 28, 28.1].map(freeDiameter)).toEqual([12.3, 13, 13, 14.5]);
    expect(cautions(ringSizeAdvice({ axialLengthMm: 31 }))).toContain('favoured 13/11 mm');
  });
  test('factors that are not recorded are named, not taken for absent in silence', () => {
    expect(cautions(ruptureRisk({ ageYears: 70 }))).toContain('glaucoma');
    expect(cautions(ruptureRisk({ ageYears: 70 }))).not.toContain('recorded: age');
  });
  test('figures on the retina stay what they are: figures of groups with their citation', () => {
    const list = answer(
      retinalDetachmentContext({ axialLengthMm: 27, ageYears: 52, posteriorCapsuleTorn: true, vitreousLost: true }),
    );
    expect(list.map(({ figure }) => figure).join('\n')).toMatch(/3\.98[^]*10\.2 %[^]*5\.12[^]*42 times[^]*12\.83/);
    for (const { citation } of list) expect(citation).toMatch(/\(seen\)$/);
  });
});

// Definition: UK national cataract audit, as seen on its site: zonule dehiscence without vitreous prolapse is excluded.
const ruptureOf = (
  posteriorCapsuleTorn: boolean | null,
  zonuleRuptured: boolean | null,
  vitreousProlapsed: boolean | null,
) => posteriorCapsuleRupture({ posteriorCapsuleTorn, zonuleRuptured, vitreousProlapsed });

describe('the audit definition of posterior capsule rupture', () => {
  test.each([
    [true, false, false, true],
    [true, null, null, true],
    [false, true, true, true],
    [false, true, false, false],
    [false, false, false, false],
    [false, null, false, false],
    [false, false, null, false],
    [null, true, true, true],
  ])('torn %s, zonule %s, vitreous %s', (torn, zonule, vitreous, counts) => {
    expect(answer(ruptureOf(torn, zonule, vitreous))).toBe(counts);
  });
  test.each([
    [null, false, false, 'posterior capsule was torn'],
    [false, null, true, 'zonule ruptured'],
    [false, null, null, 'zonule ruptured'],
    [false, true, null, 'vitreous prolapsed'],
  ])('torn %s, zonule %s, vitreous %s cannot be decided', (torn, zonule, vitreous, missing) => {
    expect(reason(ruptureOf(torn, zonule, vitreous))).toContain(`${missing} is not recorded`);
  });
  test('vitreous past an intact capsule and zonule is in doubt', () => {
    expect(cautions(ruptureOf(false, false, true))).toContain('in doubt');
  });
});

describe('acuity', () => {
  test('letters and logMAR, and what the chart cannot score', () => {
    expect(answer(acuityLogmar({ acuity: { kind: 'letters', letters: 60 } }))).toBeCloseTo(0.5, 12);
    expect(answer(acuityLogmar({ acuity: { kind: 'fraction', numerator: 6, denominator: 6 } }))).toBe(0);
    expect(reason(acuityLetters({ acuity: { kind: 'decimal', decimal: 0.005 } }))).toContain('below 0 letters');
  });
  test('a fraction out of reach is refused', () => {
    expect(reason(acuityLogmar({ acuity: { kind: 'fraction', numerator: 6, denominator: 0.5 } }))).toContain('outside');
  });
});

test('a lens with over twice the astigmatism of the cornea over-corrects at any axis', () => {
  expect(reason(annullingRotation({ cornealD: 1, lensD: 2.5 }))).toContain('over-corrects at any axis');
});

test('a wide spread between formulas names the two at its ends', () => {
  const powers = [
    { formula: 'SRK/T', powerD: 3.3 },
    { formula: 'Hoffer Q', powerD: 2.53 },
    { formula: 'Haigis', powerD: 3.54 },
  ];
  expect(cautions(formulaSpread({ powers }))).toContain('(Hoffer Q lowest, Haigis highest)');
  expect(reason(formulaSpread({ powers: powers.slice(0, 1) }))).toContain('at least two');
});

const dueAfter = (operationDate: string, count: number, interval: 'day' | 'week' | 'month' | 'year') =>
  answer(reviewDate({ operationDate, count, interval }));

const daysOverdue = (today: string, visits: readonly string[] = []) =>
  answer(
    overdueReviews({
      operationDate: '2026-03-01',
      reviews: [{ what: 'dilated retina', due: '2026-03-29', by: 'note' }],
      visits,
      today,
    }),
  ).map((review) => review.days);

describe('time', () => {
  test('an age from a year of birth says what it is; before birth is refused', () => {
    expect(cautions(ageAtOperation({ born: 1974, operationDate: '2026-03-12' }))).toContain('one year less');
    expect(reason(ageAtOperation({ born: 2030, operationDate: '2026-03-12' }))).toContain('after the operation');
    expect(reason(ageAtOperation({ born: 1974, operationDate: '2026-02-30' }))).toContain('not a calendar date');
  });
  test('a finish before the start is refused', () => {
    expect(reason(operationDuration({ startMinute: 600, finishMinute: 590 }))).toContain('finish is before the start');
  });
  test('review dates over month ends, leap years and year ends', () => {
    expect(dueAfter('2028-01-31', 1, 'month')).toBe('2028-02-29');
    expect(dueAfter('2028-02-29', 1, 'year')).toBe('2029-02-28');
    expect(dueAfter('2026-12-31', 1, 'day')).toBe('2027-01-01');
    expect(dueAfter('2026-11-30', 3, 'month')).toBe('2027-02-28');
    expect(dueAfter('2026-03-12', 4, 'week')).toBe('2026-04-09');
  });
  test('a review is overdue from the day after, unless a visit met it, a little early at most', () => {
    expect(daysOverdue('2026-03-29')).toEqual([]);
    expect(daysOverdue('2026-03-30')).toEqual([1]);
    expect(daysOverdue('2026-03-30', ['2026-03-22'])).toEqual([]);
    expect(daysOverdue('2026-03-30', ['2026-03-21'])).toEqual([1]);
  });
  test('a visit before its operation is refused', () => {
    expect(reason(daysAfterOperation({ operationDate: '2026-03-12', visit: '2026-03-11' }))).toContain('before');
  });
});
