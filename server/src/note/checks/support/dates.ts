import { addDays, addMonths, dayNumber, parseDate, writeDate } from '../../calculations/time/calendar.ts';

/** Days from one date to another; undefined when one of them is no date. */
export function daysBetween(from: string, to: string): number | undefined {
  const [a, b] = [parseDate(from), parseDate(to)];
  return a === undefined || b === undefined ? undefined : dayNumber(b) - dayNumber(a);
}

/** The last day of a date or a month: 2034-06 lasts to 2034-06-30. */
export function lastDayOf(date: string): string {
  const month = /^(\d{4})-(\d{2})$/u.exec(date);
  if (month === null) return date;
  const next = addMonths({ year: Number(month[1]), month: Number(month[2]), day: 1 }, 1);
  return writeDate(addDays(next, -1));
}

/** A date so many days, weeks, months or years later. */
export function later(date: string, count: number, unit: 'day' | 'week' | 'month' | 'year'): string | undefined {
  const from = parseDate(date);
  if (from === undefined) return undefined;
  if (unit === 'day' || unit === 'week') return writeDate(addDays(from, unit === 'week' ? 7 * count : count));
  return writeDate(addMonths(from, unit === 'year' ? 12 * count : count));
}

/** The calendar day of a date and time, as written there. */
export function dayOf(instant: string): string {
  return instant.slice(0, 10);
}
