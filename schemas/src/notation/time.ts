import { bad, good, type Notation, type Reading } from './notation.ts';

const date = /^(\d{4})-(\d{2})-(\d{2})$/u;
const month = /^(\d{4})-(\d{2})$/u;
/** As boxes print it: 12/2027. */
const monthFirst = /^(0?[1-9]|1[0-2])[/.-](\d{4})$/u;
const clockTime = /^([01]?\d|2[0-3]):([0-5]\d)$/u;
const instant =
  /^(\d{4}-\d{2}-\d{2})[T ]((?:[01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:\.\d+)?)?)(Z|[+-](?:[01]\d|2[0-3]):[0-5]\d)$/u;

/** A calendar date, ISO 8601: 2031-03-14. The value is the text. */
export const calendarDate: Notation<string> = {
  name: 'date',
  expected: 'a date written year-month-day, such as 2031-03-14',
  bareNumber: false,
  pattern: String.raw`^\d{4}-\d{2}-\d{2}$`,
  examples: ['2031-03-14'],
  read: (text) => readDate(text),
};

/** An expiry on a lens box: a date or a month (2031-03 means to the end of that month). The value is the text. */
export const expiryDate: Notation<string> = {
  name: 'expiry date',
  expected: 'a date such as 2031-03-14, or a month such as 2031-03',
  bareNumber: false,
  pattern: String.raw`^\d{4}-\d{2}(?:-\d{2})?$`,
  examples: ['2031-03', '2031-03-14'],
  read: (text) => {
    const typed = month.exec(text.trim());
    const turned = monthFirst.exec(text.trim());
    if (turned !== null) {
      const suggestion = `${turned[2]}-${turned[1]?.padStart(2, '0')}`;
      return bad('unreadable-value', `“${text}” has the month first. Write the year first: ${suggestion}.`, suggestion);
    }
    if (typed === null) return readDate(text, 'a date such as 2031-03-14, or a month such as 2031-03');
    return Number(typed[2]) >= 1 && Number(typed[2]) <= 12
      ? good(text.trim())
      : bad('unreadable-value', `“${text}” is not a month of the calendar: its months run from 01 to 12.`);
  },
};

/** A time of day on the 24-hour clock: 09:12. The value is the text with two-digit hours. */
export const timeOfDay: Notation<string> = {
  name: 'time of day',
  expected: 'a time on the 24-hour clock, such as 09:12',
  bareNumber: false,
  pattern: String.raw`^([01]?\d|2[0-3]):[0-5]\d$`,
  examples: ['09:12'],
  read: (text) => {
    const match = clockTime.exec(text.trim());
    if (match === null)
      return bad('unreadable-value', `“${text}” is not a time. Expected a time on the 24-hour clock, such as 09:12.`);
    return good(text.trim().padStart(5, '0'));
  },
};

/** A date and time with its offset from UTC, ISO 8601 / RFC 3339: 2031-03-14T10:02+01:00. The value is the text. */
export const dateAndTime: Notation<string> = {
  name: 'date and time',
  expected: 'a date and time with its offset, such as 2031-03-14T10:02+01:00',
  bareNumber: false,
  pattern: instant.source,
  examples: ['2031-03-14T10:02+01:00'],
  read: (text) => {
    const match = instant.exec(text.trim());
    if (match?.[1] === undefined) {
      return bad(
        'unreadable-value',
        `“${text}” is not a date and time with its offset. Expected one such as 2031-03-14T10:02+01:00.`,
      );
    }
    const day = readDate(match[1]);
    return day.ok ? good(text.trim()) : day;
  },
};

/** A year: 1974. */
export const calendarYear: Notation<number> = {
  name: 'year',
  expected: 'a year such as 1974',
  bareNumber: true,
  pattern: String.raw`^(?:19|20|21)\d{2}$`,
  examples: ['1974'],
  read: (text) =>
    /^(?:19|20|21)\d{2}$/u.test(text.trim())
      ? good(Number(text))
      : bad(
          'unreadable-value',
          `“${text}” is not a year. Expected a year such as 1974; keep day and month out of the note.`,
        ),
};

function readDate(text: string, expected = 'year-month-day, such as 2031-03-14'): Reading<string> {
  const match = date.exec(text.trim());
  if (match === null) return bad('unreadable-value', `“${text}” is not a date. Expected ${expected}.`);
  const [year, monthNumber, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (monthNumber < 1 || monthNumber > 12 || day < 1 || day > daysIn(year, monthNumber)) {
    return bad('unreadable-value', `“${text}” is not a day of the calendar.`);
  }
  return good(text.trim());
}

function daysIn(year: number, monthNumber: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][monthNumber - 1] ?? 0;
}
