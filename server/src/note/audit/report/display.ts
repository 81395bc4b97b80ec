import type { Figure, Group } from '../figure.ts';

const DECIMALS: Readonly<Record<string, number>> = { D: 2, '%': 1, logMAR: 2, '°': 0, years: 0, mm: 2 };
const SIGNED = new Set(['prediction-error-mean', 'flattening-mean', 'torque-mean', 'acuity-change-mean']);
/** Rare events need a second decimal to be told apart. */
const FINE_SHARES = new Set(['posterior-capsule-rupture']);
const WHOLE = new Set(['operations']);

export const NOT_SHOWN = 'not shown (small numbers)';

function decimalsOf({ name, unit }: Figure): number {
  if (WHOLE.has(name)) return 0;
  if (name === 'induced-p') return 3;
  return FINE_SHARES.has(name) ? 2 : (DECIMALS[unit] ?? 2);
}

function written(figure: Figure, value: number): string {
  const text = value.toFixed(decimalsOf(figure));
  // An axis is written 180, not 0; a rounded nought carries no sign.
  if (figure.unit === '°' && text === '0') return '180';
  if (Number(text) === 0) return text.replace('-', '');
  return SIGNED.has(figure.name) && value > 0 ? `+${text}` : text;
}

/** The value as the trade writes it, with its unit. */
export function displayValue(figure: Figure): string {
  if (figure.suppressed) return NOT_SHOWN;
  if (figure.value === null) return 'none';
  const text = written(figure, figure.value);
  if (figure.unit === '°') return `${text}°`;
  return figure.unit === '' ? text : `${text} ${figure.unit}`;
}

export function displayInterval(figure: Figure): string {
  const { interval } = figure;
  return interval === null ? '' : `${written(figure, interval.low)} to ${written(figure, interval.high)}`;
}

/** `8 of 1890` for a share, `1890` otherwise. */
export function displayCases({ count, n, suppressed }: Figure): string {
  if (suppressed) return '';
  return count === null ? String(n) : `${count} of ${n}`;
}

export function displayGroup(group: Group): string {
  const parts = Object.entries(group).map(([property, value]) => (property === 'surgeon' ? `surgeon ${value}` : value));
  return parts.length === 0 ? 'all' : parts.join(', ');
}

export function displayBenchmarks(figure: Figure): string {
  return figure.benchmarks.map(({ value, source }) => `${written(figure, value)}: ${source}`).join('; ');
}
