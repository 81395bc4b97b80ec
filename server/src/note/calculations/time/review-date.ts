import { calculation } from '../calculation.ts';
import { choice, whole } from '../fields.ts';
import { found } from '../outcome.ts';
import { dateField } from './age.ts';
import { addDays, addMonths, parseDate, writeDate } from './calendar.ts';

export const INTERVALS = ['day', 'week', 'month', 'year'] as const;
export type Interval = (typeof INTERVALS)[number];

export const COUNT = whole('number of intervals', 0, 3650);
export const INTERVAL = choice('interval', INTERVALS);

interface Due {
  readonly operationDate: string;
  readonly count: number;
  readonly interval: Interval;
}

export const reviewDate = calculation<Due, string>({
  name: 'review-date',
  topic: 'Time',
  definition: 'Date on which a review is due.',
  inputs: {
    operationDate: dateField('date of the operation'),
    count: COUNT,
    interval: INTERVAL,
  },
  unit: '',
  domain: "The schedule is the department's; nothing is scheduled by default.",
  method: 'operation date + interval; a day the month does not have becomes its last day',
  source: { citation: 'calendar arithmetic', status: 'derived' },
  example: { input: { operationDate: '2026-01-31', count: 1, interval: 'month' }, gives: '2026-02-28' },
  compute: ({ operationDate, count, interval }) => {
    const from = parseDate(operationDate) ?? { year: NaN, month: NaN, day: NaN };
    const due = {
      day: () => addDays(from, count),
      week: () => addDays(from, 7 * count),
      month: () => addMonths(from, count),
      year: () => addMonths(from, 12 * count),
    }[interval]();
    return found(writeDate(due));
  },
});
