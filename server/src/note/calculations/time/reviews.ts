import { calculation } from '../calculation.ts';
import { listOf, part } from '../fields.ts';
import { found, refused } from '../outcome.ts';
import { dateField } from './age.ts';
import { dayNumber, parseDate } from './calendar.ts';
import { COUNT, INTERVAL, reviewDate, type Interval } from './review-date.ts';

/** A review that is wanted: on a date, or so long after the operation. */
export type WantedReview = {
  readonly what: string;
  /** Who wants it, for instance the note or the department's schedule. */
  readonly by: string;
} & ({ readonly date: string } | { readonly count: number; readonly interval: Interval });

export type DueReview = { readonly what: string; readonly due: string; readonly by: string };
export type OverdueReview = { readonly what: string; readonly due: string; readonly days: number };

const DUE = dateField('due date of a review');
const VISIT = dateField('date of a visit');
const named = (entry: unknown): string | undefined =>
  typeof part(entry, 'what') === 'string' ? undefined : 'a review does not say what it is for';

const WANTED = listOf('reviews', 'what, and a date or an interval', (entry) => {
  const date = part(entry, 'date');
  if (date !== undefined) return named(entry) ?? DUE.fault(date);
  return named(entry) ?? COUNT.fault(part(entry, 'count')) ?? INTERVAL.fault(part(entry, 'interval'));
});
const DATED = listOf('reviews', 'what, and the due date', (entry) => named(entry) ?? DUE.fault(part(entry, 'due')));

export const reviewDates = calculation<
  { operationDate: string; reviews: readonly WantedReview[] },
  readonly DueReview[]
>({
  name: 'review-dates',
  topic: 'Time',
  definition: 'Every review with the date it is due, the earliest first.',
  inputs: { operationDate: dateField('date of the operation'), reviews: WANTED },
  unit: '',
  domain:
    "Only what the note or the department's schedule asks for; a review that an earlier one on that date already contains counts once.",
  method: 'operation date + interval; sorted by date',
  source: { citation: 'calendar arithmetic', status: 'derived' },
  example: {
    input: {
      operationDate: '2031-03-14',
      reviews: [
        { what: 'dilated peripheral retina', by: 'schedule', count: 4, interval: 'week' },
        { what: 'pressure', by: 'note', count: 1, interval: 'day' },
      ],
    },
    gives: [
      { what: 'pressure', due: '2031-03-15', by: 'note' },
      { what: 'dilated peripheral retina', due: '2031-04-11', by: 'schedule' },
    ],
  },
  compute: ({ operationDate, reviews }) => {
    const list: DueReview[] = [];
    for (const review of reviews) {
      const due = 'date' in review ? found(review.date) : reviewDate({ operationDate, ...review });
      if (!due.ok) return due;
      const { what, by } = review;
      const twice = list.some((one) => one.due === due.value && one.what.toLowerCase().includes(what.toLowerCase()));
      if (!twice) list.push({ what, due: due.value, by });
    }
    return found<readonly DueReview[]>(list.toSorted((a, b) => (a.due < b.due ? -1 : Number(a.due > b.due))));
  },
});

const days = (from: string, to: string): number => {
  const [first, last] = [parseDate(from), parseDate(to)];
  return first === undefined || last === undefined ? NaN : dayNumber(last) - dayNumber(first);
};

interface Followed {
  readonly operationDate: string;
  readonly reviews: readonly DueReview[];
  /** Dates of the visits that are recorded. */
  readonly visits: readonly string[];
  readonly today: string;
}

/** A visit this share of the interval before the due date still counts as the review. */
const EARLY_SHARE = 0.25;

export const overdueReviews = calculation<Followed, readonly OverdueReview[]>({
  name: 'overdue-reviews',
  topic: 'Time',
  definition: 'Reviews whose day has passed without a visit, with the days since.',
  inputs: {
    operationDate: dateField('date of the operation'),
    reviews: DATED,
    visits: listOf('visits', 'dates', VISIT.fault),
    today: dateField('today'),
  },
  unit: '',
  domain: 'A visit on the due date or later, or earlier by at most a quarter of the interval, meets the review.',
  method: 'due date before today, and no visit that meets it',
  source: { citation: 'rule of this program', status: 'common practice' },
  cautions: ['A visit elsewhere, or one not yet written down, looks the same as no visit.'],
  example: {
    input: {
      operationDate: '2031-03-14',
      reviews: [
        { what: 'pressure', due: '2031-03-15', by: 'note' },
        { what: 'dilated peripheral retina', due: '2031-04-11', by: 'note' },
      ],
      visits: ['2031-03-15'],
      today: '2031-04-20',
    },
    gives: [{ what: 'dilated peripheral retina', due: '2031-04-11', days: 9 }],
  },
  compute: ({ operationDate, reviews, visits, today }) =>
    found<readonly OverdueReview[]>(
      reviews.flatMap(({ what, due }) => {
        const early = Math.floor(days(operationDate, due) * EARLY_SHARE);
        const met = visits.some((visit) => days(due, visit) >= -early);
        const over = days(due, today);
        return over > 0 && !met ? [{ what, due, days: over }] : [];
      }),
    ),
});

export const daysAfterOperation = calculation<{ operationDate: string; visit: string }, number>({
  name: 'days-after-operation',
  topic: 'Time',
  definition: 'Days from the operation to a visit.',
  inputs: { operationDate: dateField('date of the operation'), visit: dateField('date of the visit') },
  unit: 'days',
  domain: 'The day of the operation is day 0.',
  method: 'date of the visit - date of the operation',
  source: { citation: 'calendar arithmetic', status: 'derived' },
  example: { input: { operationDate: '2031-03-14', visit: '2031-04-11' }, gives: 28 },
  compute: ({ operationDate, visit }) => {
    const count = days(operationDate, visit);
    return count < 0 ? refused(`the visit (${visit}) is dated before the operation (${operationDate})`) : found(count);
  },
});
