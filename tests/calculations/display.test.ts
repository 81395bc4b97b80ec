import { expect, test } from 'vitest';
import {
  displayAxis,
  displayNumber,
  displayPower,
  displayShare,
  displayVector,
  fixed,
} from '../../server/src/note/calculations/display.ts';

test('half is rounded away from zero, and binary noise does not tip it', () => {
  expect(fixed(1.005, 2)).toBe('1.01');
  expect(fixed(-1.005, 2)).toBe('-1.01');
  expect(fixed(0.125, 2)).toBe('0.13');
  expect(fixed(2.675, 2)).toBe('2.68');
});

test('zero has no sign', () => {
  expect(fixed(-0.001, 2)).toBe('0.00');
  expect(displayPower(-0.001)).toBe('0.00');
});

test('each unit is written as the trade writes it', () => {
  expect(displayNumber(43.594, 'D')).toBe('43.59 D');
  expect(displayNumber(30.416, 'mm')).toBe('30.42 mm');
  expect(displayNumber(55.167, 'mmHg')).toBe('55 mmHg');
  expect(displayNumber(0.4771, 'logMAR')).toBe('0.48 logMAR');
  expect(displayNumber(119.6, '°')).toBe('120°');
  expect(displayNumber(1.4424, '')).toBe('1.44');
});

test('powers carry their sign', () => {
  expect(displayPower(5.5)).toBe('+5.50');
  expect(displayPower(-3)).toBe('-3.00');
});

test('axes and cylinders', () => {
  expect(displayAxis(null)).toBe('no axis');
  expect(displayAxis(77.35)).toBe('77°');
  expect(displayVector({ magnitude: 1.307, axis: 77.35 })).toBe('1.31 D @ 77°');
  expect(displayVector({ magnitude: 0, axis: null })).toBe('0.00 D, no axis');
});

test('shares in per cent', () => {
  expect(displayShare(0.697214)).toBe('70 %');
  expect(displayShare(0.013758, 2)).toBe('1.38 %');
});
