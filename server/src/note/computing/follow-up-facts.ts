import type { Department, FollowUp, Operation } from '@sideport/schemas';
import { refused } from '../calculations/outcome.ts';
import { corneaOf, type Cornea } from './corneas.ts';
import { valueOf, type Known } from './known.ts';
import { operationFacts, type OperationFacts } from './operation-facts.ts';
import { refractionOf, type SpectacleRefraction } from './refractions.ts';
import { spotIn, type SpotFinder } from './result.ts';

/** What the values of a follow-up are computed from: the visit, and the operation it names. */
export interface FollowUpFacts {
  readonly note: FollowUp;
  /** undefined where the set does not have the operation. */
  readonly operation: OperationFacts | undefined;
  readonly noOperation: Known<never>;
  readonly date: Known<string>;
  readonly cornea: Cornea;
  readonly refraction: SpectacleRefraction;
  readonly spot: SpotFinder;
}

export function followUpFacts(
  note: FollowUp,
  operation: Operation | null,
  department: Department | null,
): FollowUpFacts {
  const partner =
    operation === null ? undefined : operationFacts(operation, { department, today: null, visits: () => [] });
  return {
    note,
    operation: partner,
    noOperation: refused(
      note.operation === undefined
        ? 'the visit does not say which operation it follows'
        : `the operation ${note.operation.value} is not in this set`,
    ),
    date: valueOf(note.date, 'the date of the visit'),
    cornea: corneaOf(note.keratometry, department?.['keratometric-index']?.value.amount),
    refraction: refractionOf(note, department?.['vertex-distance']?.value.amount),
    spot: spotIn(note.eye, note.operation, note.id, note.record, note.$),
  };
}
