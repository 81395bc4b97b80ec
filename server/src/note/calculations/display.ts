/**
 * The one rounding rule: values are kept at full precision, and rounded only where a person reads them, as the trade
 * does. Dioptres to 0.01, axes and positions to 1 degree (a horizontal axis is 180, never 0; no axis is "no axis"),
 * lengths to 0.01 mm, pressures to 1 mmHg, logMAR to 0.01, letters and minutes to 1, times of ultrasound to 0.1 s,
 * ratios to 0.01. Half is rounded away from zero, and zero has no sign.
 */
import type { Vector } from './quantities.ts';

const DECIMALS: Readonly<Record<string, number>> = {
  D: 2,
  mm: 2,
  '°': 0,
  mmHg: 0,
  cm: 0,
  s: 1,
  min: 0,
  logMAR: 2,
  letters: 0,
  lines: 1,
  years: 0,
  days: 0,
  "o'clock": 1,
};

/** Units that are words, where there is one of them. */
const ONE_OF: Readonly<Record<string, string>> = { letters: 'letter', years: 'year', days: 'day' };

/** A number with a fixed count of decimals; half goes away from zero. */
export function fixed(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  // The relative nudge undoes binary noise: 1.005 is held as 1.00499999999999989.
  const rounded = Math.round(Math.abs(value) * scale * (1 + 2 * Number.EPSILON)) / scale;
  const text = rounded.toFixed(decimals);
  return value < 0 && rounded !== 0 ? `-${text}` : text;
}

/** A number as the trade writes it in this unit. */
export function displayNumber(value: number, unit: string): string {
  const text = fixed(value, DECIMALS[unit] ?? 2);
  if (unit === '') return text;
  if (unit === '°') return `${text}°`;
  return `${text} ${text === '1' ? (ONE_OF[unit] ?? unit) : unit}`;
}

/** Dioptres with their sign, as a lens power or a refraction is written. */
export function displayPower(dioptres: number): string {
  const text = fixed(dioptres, 2);
  return text.startsWith('-') || Number(text) === 0 ? text : `+${text}`;
}

/** An axis in whole degrees, 1 to 180. */
export function displayAxis(axis: number | null): string {
  if (axis === null) return 'no axis';
  const whole = Math.round(axis);
  return `${whole === 0 ? 180 : whole}°`;
}

/** A cylinder with its axis: `1.50 D @ 90°`; one that rounds to nothing has no axis worth writing. */
export function displayVector({ magnitude, axis }: Vector): string {
  const size = displayNumber(magnitude, 'D');
  return axis === null || Number(fixed(magnitude, 2)) === 0 ? `${size}, no axis` : `${size} @ ${displayAxis(axis)}`;
}

/** A share or probability in per cent. */
export const displayShare = (share: number, decimals = 0): string => `${fixed(share * 100, decimals)} %`;
