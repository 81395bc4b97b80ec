import type { Field, Operation, Quantity, Site as Place } from '@sideport/schemas';
import type { Outcome } from '../calculations/outcome.ts';
import type { Site } from '../calculations/position/site.ts';
import type { Eye } from '../calculations/quantities.ts';
import { amountOf, type Known } from './known.ts';
import { positionOfField } from './positions.ts';
import { spotIn, type Spot } from './result.ts';

export interface MainIncision {
  readonly position: Outcome<number>;
  /** The final width, after enlarging. */
  readonly widthMm: Known<number>;
  readonly at: Spot;
  readonly planned: boolean;
}

function incision(
  at: Field<Place> | undefined,
  width: Field<Quantity> | undefined,
  spot: Spot,
  planned: boolean,
  eye: Known<Eye>,
  seat: Known<Site>,
): MainIncision {
  return {
    position: positionOfField(at, 'the site of the main incision', eye, seat),
    widthMm: amountOf(width, 'the width of the main incision'),
    at: spot,
    planned,
  };
}

/** The main incision as made, or as planned while none is recorded as made. */
export function mainIncisionOf(
  note: Operation,
  eye: Known<Eye>,
  { seat, plannedSeat }: { readonly seat: Known<Site>; readonly plannedSeat: Known<Site> },
): MainIncision | undefined {
  const made = note.incisions?.items.find((item) => item.kind?.value === 'main');
  if (made !== undefined)
    return incision(made.at, made['enlarged-to'] ?? made.width, spotIn(made.$)(made.at), false, eye, seat);
  const plan = note.plan?.incision;
  return plan && incision(plan.at, plan.width, spotIn(plan.$)(plan.at), true, eye, plannedSeat);
}
