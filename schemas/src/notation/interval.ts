import { bad, good, type Notation, type Reading } from './notation.ts';
import { calendarDate } from './time.ts';

type Unit = 'day' | 'week' | 'month' | 'year';

/** When something is due: a date, or so many days, weeks, months or years after the operation. */
export type Due =
  | { readonly kind: 'date'; readonly date: string }
  | { readonly kind: 'after'; readonly count: number; readonly unit: Unit };

const number = String.raw`\d{1,3}|one|two|three|four|five|six`;
const unit = 'hours?|hrs?|days?|weeks?|wks?|months?|mths?|years?|yrs?|[hdwy]';
/** Of a span of time, “2-3 weeks”, the later end counts. */
const countFirst = new RegExp(
  String.raw`^(?:in |after |at )?(?:(?:${number}) ?(?:-|–|to) ?)?(?<count>${number}) ?(?<unit>${unit})(?: after(?: the operation| surgery)?| post-?op)?$`,
  'u',
);
const unitFirst = /^(?<unit>day|week|month|year|d) ?(?<count>\d{1,3})$/u;
/** In parts of a week, a year or a month: 1/7, 2/52, 6/12. */
const inParts = /^(?:in )?(?<count>\d{1,2})\/(?<whole>7|52|12)$/u;
const units: Readonly<Record<string, Unit>> = {
  d: 'day',
  w: 'week',
  m: 'month',
  y: 'year',
  '7': 'day',
  '52': 'week',
  '12': 'month',
};
const spelled: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };
const named: Readonly<Record<string, number>> = { tomorrow: 1, 'next day': 1, 'same day': 0 };
const expected = 'a date such as 2031-03-15, or a time after the operation such as 1 day, 4 weeks or 3 months';

export const due: Notation<Due> = {
  name: 'due date',
  expected,
  bareNumber: false,
  examples: ['1 day', '4 weeks', '2031-03-15'],
  read: readDue,
};

function readDue(text: string): Reading<Due> {
  const folded = text.trim().toLowerCase().replace(/\s+/gu, ' ');
  if (/^\d{4}-/u.test(folded)) {
    const date = calendarDate.read(folded);
    return date.ok ? good({ kind: 'date', date: date.value }) : date;
  }
  const days = named[folded];
  if (days !== undefined) return good({ kind: 'after', count: days, unit: 'day' });
  const found = (countFirst.exec(folded) ?? unitFirst.exec(folded) ?? inParts.exec(folded))?.groups;
  const after = found === undefined ? undefined : afterOperation(found);
  return after === undefined
    ? bad('unreadable-value', `“${text}” does not say when. Expected ${expected}.`)
    : good({ kind: 'after', ...after });
}

/** Hours count in whole days. */
function afterOperation(
  found: Readonly<Record<string, string | undefined>>,
): { count: number; unit: Unit } | undefined {
  const typed = found['count'] ?? '';
  const count = spelled[typed] ?? Number(typed);
  const of = found['whole'] ?? found['unit']?.[0] ?? '';
  if (of === 'h') return count > 0 && count % 24 === 0 ? { count: count / 24, unit: 'day' } : undefined;
  const read = units[of];
  return read === undefined ? undefined : { count, unit: read };
}
