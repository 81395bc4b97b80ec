import type { Around } from '../around.ts';
import type { Action, ActionSource } from './action.ts';
import { clockHourToDegrees } from './clock-hour.ts';
import { recordAccount } from './complication-account.ts';
import { confirmValue } from './confirm.ts';
import { recordAbsence } from './empty-value.ts';
import { addFollowUpFile } from './follow-up-file.ts';
import { fillFromLabel } from './label-fields.ts';
import { decideProposals } from './proposals.ts';
import { writeUnit } from './write-unit.ts';

/** Every action, in the order in which they are shown. */
export const actionSources: readonly ActionSource[] = [
  confirmValue,
  decideProposals,
  recordAbsence,
  writeUnit,
  clockHourToDegrees,
  fillFromLabel,
  recordAccount,
  addFollowUpFile,
];

/** All that can be done at an offset, besides the fixes of remarks. */
export function actionsAt(around: Around, offset: number): readonly Action[] {
  const all = actionSources.flatMap((source) => source(around, offset));
  // What has no place in the note as it is written is not offered.
  return all.filter(({ edits, newFile }) => edits.length > 0 || newFile !== undefined);
}
