const LAST_DAY = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/**
 * The four-digit year that a two-digit year means.
 * Source: GS1 General Specifications: more than 50 years ahead is the past century, 50 or more years
 * back is the coming one.
 * @param year the year to count from, that of the operation
 */
export function fullYear(twoDigits: number, year: number): number {
  const century = year - (year % 100);
  const ahead = twoDigits - (year % 100);
  if (ahead >= 51) return century - 100 + twoDigits;
  if (ahead <= -50) return century + 100 + twoDigits;
  return century + twoDigits;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** ISO date, or a sentence that says which part of it cannot be. Day 0 leaves the day open. */
export function labelDate(year: number, month: number, day: number): { date: string } | { because: string } {
  if (month < 1 || month > 12) return { because: `there is no month ${two(month)}` };
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const last = month === 2 && leap ? 29 : (LAST_DAY[month - 1] ?? 31);
  if (day > last) return { because: `${year}-${two(month)} has no day ${two(day)}` };
  return { date: day === 0 ? `${year}-${two(month)}` : `${year}-${two(month)}-${two(day)}` };
}

/** ISO date of a day counted from the start of the year (1 to 365 or 366). */
export function dayOfYearDate(year: number, dayOfYear: number): { date: string } | { because: string } {
  let left = dayOfYear;
  for (let month = 1; month <= 12 && left >= 1; month++) {
    const attempt = labelDate(year, month, left);
    if ('date' in attempt) return attempt;
    const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
    left -= month === 2 && leap ? 29 : (LAST_DAY[month - 1] ?? 31);
  }
  return { because: `${year} has no day ${dayOfYear}` };
}
