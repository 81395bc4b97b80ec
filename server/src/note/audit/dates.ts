const DAY_MS = 86_400_000;

/** Whole days from one ISO date to another; null when one is no date. */
export function daysBetween(from: string, to: string): number | null {
  const days = (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS;
  return Number.isFinite(days) ? Math.round(days) : null;
}

export type PeriodLength = 'month' | 'quarter' | 'year';

/** The period a date falls in: `2026-03`, `2026-Q1` or `2026`. */
export function periodOf(date: string, length: PeriodLength): string {
  const year = date.slice(0, 4);
  const month = date.slice(5, 7);
  if (length === 'year') return year;
  if (length === 'month') return `${year}-${month}`;
  return `${year}-Q${Math.ceil(Number(month) / 3)}`;
}
