const DAY = 86_400_000;
const SHAPE = /^(\d{4})-(\d{2})-(\d{2})$/;

/** A date in the proleptic Gregorian calendar, or undefined where the text is no date (2026-02-30). */
export interface CalendarDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

export function parseDate(text: string): CalendarDate | undefined {
  const match = SHAPE.exec(text);
  if (match === null) return undefined;
  const date = { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) };
  return date.month >= 1 && date.month <= 12 && date.day >= 1 && date.day <= daysInMonth(date.year, date.month)
    ? date
    : undefined;
}

const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysInMonth = (year: number, month: number): number =>
  month === 2 && isLeap(year) ? 29 : (MONTHS[month - 1] ?? NaN);

export const writeDate = ({ year, month, day }: CalendarDate): string =>
  `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

/** Number of the day, counted from 1970-01-01. */
export const dayNumber = ({ year, month, day }: CalendarDate): number => Date.UTC(year, month - 1, day) / DAY;

export function addDays(date: CalendarDate, days: number): CalendarDate {
  const moved = new Date((dayNumber(date) + days) * DAY);
  return { year: moved.getUTCFullYear(), month: moved.getUTCMonth() + 1, day: moved.getUTCDate() };
}

/** Adds months; a day that the month does not have becomes its last day (31 January + 1 month = 28 February). */
export function addMonths({ year, month, day }: CalendarDate, months: number): CalendarDate {
  const count = year * 12 + (month - 1) + months;
  const target = { year: Math.floor(count / 12), month: (count % 12) + 1 };
  return { ...target, day: Math.min(day, daysInMonth(target.year, target.month)) };
}
