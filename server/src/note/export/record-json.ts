import { recordPlan } from '@sideport/schemas';
import type { ComputedValue } from '../computing/computed.ts';
import type { Leaving } from './leaving.ts';
import { plainNote } from './plain-note.ts';

/** One record as plain JSON: the note under its own field names, what was computed, and codes where asked for. */
export function recordJson(leaving: Leaving): object {
  const note = plainNote(leaving.note, recordPlan(leaving.kind));
  if (leaving.kind === 'amendment') return { record: leaving.kind, note };
  const computed = leaving.computed.map((value) => computedJson(value));
  if (leaving.kind === 'follow-up') return { record: leaving.kind, note, computed };
  const { derived, codes } = leaving;
  return { record: leaving.kind, note, derived, computed, ...(codes ? { codes } : {}) };
}

/** Without its inputs: they stand in the record itself, and `compute` names them one by one. */
function computedJson({ name, value, unit, method, source, path, cautions }: ComputedValue): object {
  return { name, value, unit, method, source, path, cautions };
}
