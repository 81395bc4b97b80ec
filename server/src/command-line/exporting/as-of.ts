import { WrongUse } from '../world.ts';

/** The day of an export as it was given, year-month-day. Throws WrongUse for what is no day of the calendar. */
export function readDay(text: string): string {
  const time = Date.parse(`${text}T00:00:00Z`);
  const isDay = /^\d{4}-\d{2}-\d{2}$/u.test(text) && Number.isFinite(time);
  if (!isDay || !new Date(time).toISOString().startsWith(text)) {
    throw new WrongUse(`--as-of cannot be ${text}. Write a day such as 2031-12-31.`);
  }
  return text;
}
