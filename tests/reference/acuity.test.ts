import { describe, expect, test } from 'vitest';
import { lettersGained, linesGained } from '../../server/src/note/calculations/acuity/gain.ts';
import {
  acuityLetters,
  acuityLogmar,
  acuityLogmarOfCategory,
  snellenDenominator,
  type Acuity,
} from '../../server/src/note/calculations/acuity/logmar.ts';
import { answer, reason } from '../calculations/answer.ts';

const feet = (denominator: number): Acuity => ({ kind: 'fraction', numerator: 20, denominator });
const metres = (denominator: number): Acuity => ({ kind: 'fraction', numerator: 6, denominator });

// Gregori, Feuer, Rosenfeld, Retina 2010 (abstract seen): letters = 85 + 50 log10 (Snellen fraction).
test.each([
  [20, 85],
  [40, 70],
  [200, 35],
])('Gregori 2010: 20/%s is about %s letters', (denominator, letters) => {
  expect(answer(acuityLetters({ acuity: feet(denominator) }))).toBeCloseTo(letters, 0);
});

// Holladay 2004 (seen): a line is a step of 10^0.1 = 1.2589; line 10 is 20/200, logMAR 1.0.
describe('Holladay 2004, visual acuity measurements', () => {
  test('20/200 is logMAR 1.0', () => {
    expect(answer(acuityLogmar({ acuity: feet(200) }))).toBeCloseTo(1, 12);
  });
  test('one line is a factor of 1.2589 and five letters', () => {
    const afterLogmar = answer(acuityLogmar({ acuity: feet(20) }));
    const beforeLogmar = answer(acuityLogmar({ acuity: feet(20 * 1.2589254) }));
    expect(answer(linesGained({ beforeLogmar, afterLogmar }))).toBeCloseTo(1, 6);
    expect(answer(lettersGained({ beforeLogmar, afterLogmar }))).toBeCloseTo(5, 5);
  });
});

// Common practice, no source: the Snellen lines in metres and in feet that every clinic treats as one.
test.each([
  [5, 20 / 1.2],
  [6, 20],
  [9, 30],
  [12, 40],
  [18, 60],
  [24, 80],
  [36, 120],
  [60, 200],
])('6/%s is 20/%s', (denominator, inFeet) => {
  expect(answer(snellenDenominator({ acuity: metres(denominator), numerator: 20 }))).toBeCloseTo(inFeet, 9);
});

// Schulze-Bonsel et al. 2006 (seen): counting fingers decimal 0.014, hand movements 0.005; light perception gave chance.
describe('Schulze-Bonsel 2006', () => {
  test.each([
    ['CF', 0.014],
    ['HM', 0.005],
  ] as const)('%s is the logarithm of the decimal they measured', (category, decimal) => {
    const ours = answer(acuityLogmarOfCategory(category, 'schulze-bonsel-2006'));
    expect(Math.abs(ours + Math.log10(decimal))).toBeLessThan(0.006);
  });
  test('perception of light was not measurable', () => {
    expect(reason(acuityLogmarOfCategory('PL', 'schulze-bonsel-2006'))).toContain('could not be measured');
  });
});

// Lange et al. 2009 (numbers seen): 1.98 ± 0.24 and 2.28 ± 0.15; the two studies agree within their spread.
test.each([
  ['CF', 0.24],
  ['HM', 0.15],
] as const)('Lange 2009 agrees with Schulze-Bonsel 2006 on %s within its standard deviation', (category, deviation) => {
  const [lange, schulze] = (['lange-2009', 'schulze-bonsel-2006'] as const).map((scheme) =>
    answer(acuityLogmarOfCategory(category, scheme)),
  );
  expect(Math.abs((lange ?? NaN) - (schulze ?? NaN))).toBeLessThan(deviation);
});
