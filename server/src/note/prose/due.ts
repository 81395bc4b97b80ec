import type { Operation } from '@sideport/schemas';
import { join, longDate } from './english.ts';
import type { Tidy } from './passage.ts';

type Review = NonNullable<Operation['reviews']>['items'][number];

/** `Reviews: pressure (after 1 day, clinic); suture removal (on 14 April 2031)`. */
export function reviewsWords(reviews: readonly Review[] | undefined, tidy: Tidy): string | undefined {
  if (reviews === undefined || reviews.length === 0) return undefined;
  const all = reviews.map((review) => {
    // In brackets: the words before may end in a condition of their own.
    const when = join([review.due && dueWords(review.due.value), tidy(review.by)], ', ');
    return join([tidy(review.what) ?? 'review', when !== '' && `(${when})`]);
  });
  return `Reviews: ${all.join('; ')}`;
}

function dueWords(due: NonNullable<Review['due']>['value']): string {
  if (due.kind === 'date') return `on ${longDate(due.date)}`;
  if (due.count === 0) return 'the same day';
  return `after ${due.count} ${due.unit}${due.count === 1 ? '' : 's'}`;
}
