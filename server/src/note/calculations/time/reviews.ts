import { calculation } from '../calculation.ts';
import { choice, quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { dateField } from './age.ts';
import { addDays, addMonths, dayNumber, parseDate, writeDate } from './calendar.ts';

export const INTERVALS = ['day', 'week', 'month', 'year'] as const;
export type Interval = (typeof INTERVALS)[number];

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
    count: quantity('number of intervals', '', 0, 3650),
    interval: choice('interval', INTERVALS),
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

export const reviewOverdue = calculation<{ due: string; today: string }, number>({
  name: 'review-overdue',
  topic: 'Time',
  definition: 'Days since a review fell due; negative is days still to go.',
  inputs: { due: dateField('due date'), today: dateField('today') },
  unit: 'days',
  domain: 'Overdue from the day after the due date, unless a visit on or after the operation did it.',
  method: 'today - due date',
  source: { citation: 'calendar arithmetic', status: 'derived' },
  example: { input: { due: '2026-02-28', today: '2026-03-03' }, gives: 3 },
  compute: ({ due, today }) => {
    const [from, to] = [parseDate(due), parseDate(today)];
    return found(from === undefined || to === undefined ? NaN : dayNumber(to) - dayNumber(from));
  },
});
