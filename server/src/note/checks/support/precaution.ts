import type { Operation, Place } from '@sideport/schemas';
import { has } from './course.ts';

type Precaution = NonNullable<NonNullable<Operation['plan']>['precautions']>['items'][number]['value'];

/**
 * Where the precautions stand when none of these is among them; undefined when one is, when “none needed” is said, or
 * when there is no plan at all.
 */
export function planWithout({ plan }: Operation, ...wanted: readonly Precaution[]): Place | undefined {
  if (plan === undefined || has(plan.precautions, ...wanted, 'none needed') !== undefined) return undefined;
  const place = plan.precautions?.$ ?? plan.$.said['precautions'] ?? plan.$;
  return place.key === null ? place : { span: place.key, key: place.key, path: place.path };
}
