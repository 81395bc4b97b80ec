import type { Due, FollowUp, Operation, Place } from '@sideport/schemas';
import { daysBetween, later } from './dates.ts';

type Reviews = Pick<Operation | FollowUp, 'reviews' | '$'>;
type Review = NonNullable<Operation['reviews']>['items'][number];

const RETINA = /retina|fundus|periphery|vitreo/iu;

export function looksAtRetina({ what }: Pick<Review, 'what'>): boolean {
  return what !== undefined && RETINA.test(what.value);
}

/**
 * Where the reviews stand when none of them is as asked; undefined when one is, or when no reviews are recorded at
 * all, which is another gap.
 */
export function reviewsWithout(note: Reviews, isAsked: (review: Review) => boolean): Place | undefined {
  const said = note.$.said['reviews'];
  if (said !== undefined) return said.word === 'none' ? said : undefined;
  if (note.reviews === undefined || note.reviews.items.some((review) => isAsked(review))) return undefined;
  const { $ } = note.reviews;
  return $.key === null ? $ : { span: $.key, key: $.key, path: $.path };
}

/** Days after a date at which something is due. */
export function dueAfter(due: Due, date: string): number | undefined {
  const day = due.kind === 'date' ? due.date : later(date, due.count, due.unit);
  return day === undefined ? undefined : daysBetween(date, day);
}
