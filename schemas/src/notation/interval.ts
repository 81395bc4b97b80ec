import { bad, good, type Notation, type Reading } from './notation.ts';
import { calendarDate } from './time.ts';

/** When something is due: a date, or so many days, weeks, months or years after the operation. */
export type Due =
  | { readonly kind: 'date'; readonly date: string }
  | { readonly kind: 'after'; readonly count: number; readonly unit: 'day' | 'week' | 'month' | 'year' };

const shape =
  /^(?:in |after )?(\d{1,3}|one|two|three|four|five|six)\s*(day|week|month|year)s?(?: after(?: the operation| surgery)?)?$/u;
const units = ['day', 'week', 'month', 'year'] as const;
const spelled: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };
const expected = 'a date such as 2031-03-15, or a time after the operation such as 1 day, 4 weeks or 3 months';

export const due: Notation<Due> = {
  name: 'due date',
  expected,
  bareNumber: false,
  examples: ['1 day', '4 weeks', '2031-03-15'],
  read: readDue,
};

function readDue(text: string): Reading<Due> {
  const folded = text.trim().toLowerCase();
  if (/^\d{4}-/u.test(folded)) {
    const date = calendarDate.read(folded);
    return date.ok ? good({ kind: 'date', date: date.value }) : date;
  }
  if (folded === 'tomorrow' || folded === 'next day') return good({ kind: 'after', count: 1, unit: 'day' });
  const match = shape.exec(folded);
  const unit = units.find((candidate) => candidate === match?.[2]);
  if (match?.[1] === undefined || unit === undefined) {
    return bad('unreadable-value', `“${text}” does not say when. Expected ${expected}.`);
  }
  return good({ kind: 'after', count: spelled[match[1]] ?? Number(match[1]), unit });
}
