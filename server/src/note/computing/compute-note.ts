import type { CheckContext } from '../checks/check.ts';
import type { ComputedNote } from './computed.ts';

export type { ComputedNote, ComputedValue, NotComputed } from './computed.ts';

/** Computes everything that the recorded fields of a note allow. Never throws. */
export function computeNote(_context: CheckContext): ComputedNote {
  return { values: [], notComputed: [] };
}
