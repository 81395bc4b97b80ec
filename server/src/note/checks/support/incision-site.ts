import type { Field, Operation, Site } from '@sideport/schemas';
import { positionOf } from '../../calculations/position/site.ts';
import { mainIncision } from './course.ts';
import { apart, positionOn } from './measurements.ts';
import { certainEye } from './sides.ts';

export interface ComparedSite {
  /** Where the main incision was made. */
  readonly made: Field<Site>;
  readonly madeAt: number;
  /** Where it was expected: as planned, or else where the surgeon sat. */
  readonly expected: Field<Site> | NonNullable<Operation['seat']>;
  readonly expectedAt: number;
  readonly from: 'plan' | 'seat';
  readonly apart: number;
  /** Made where the plan or the seat would be in the other eye: nasal and temporal changed over. */
  readonly mirrored: boolean;
}

const MIRROR_WITHIN = 20;
const AWAY = 60;

/** The main incision held against the planned site, or else against the seat. */
export function comparedSite(note: Operation, from: 'plan' | 'seat'): ComparedSite | undefined {
  const eye = certainEye(note);
  const made = mainIncision(note)?.at;
  const expected = from === 'plan' ? note.plan?.incision?.at : note.seat;
  if (eye === undefined || made === undefined || expected === undefined) return undefined;
  const madeAt = positionOn(made.value, eye, note.seat);
  const expectedAt =
    typeof expected.value === 'string' ? positionOf(expected.value, eye) : positionOn(expected.value, eye, note.seat);
  if (madeAt === undefined || expectedAt === undefined) return undefined;
  const distance = apart(madeAt, expectedAt);
  const mirrored = distance > AWAY && apart(madeAt, 180 - expectedAt) <= MIRROR_WITHIN;
  return { made, madeAt, expected, expectedAt, from, apart: distance, mirrored };
}

/** The incision on the mirrored side of the eye, against the plan or, without a planned site, against the seat. */
export function mirroredIncision(note: Operation): ComparedSite | undefined {
  const found = comparedSite(note, 'plan') ?? comparedSite(note, 'seat');
  return found?.mirrored === true ? found : undefined;
}
