import { recordPlan } from '@sideport/schemas';
import type { ComputedValue } from '../computing/computed.ts';
import { compareText } from '../reports/report-input.ts';
import type { Leaving } from './leaving.ts';
import { plainNote } from './plain-note.ts';
import { computedDecimal } from './written-value.ts';

/** One record as plain JSON: the note under its own field names, what was computed, and codes where asked for. */
export function recordJson(leaving: Leaving): object {
  const note = plainNote(leaving.note, recordPlan(leaving.kind));
  // In the order of their names, here and below: the canonical form asks for it, and this saves sorting them.
  if (leaving.kind === 'amendment') return { note, record: leaving.kind };
  const computed = leaving.computed.map((value) => computedJson(value));
  if (leaving.kind === 'follow-up') return { computed, note, record: leaving.kind };
  const { derived, codes } = leaving;
  return { ...(codes ? { codes } : {}), computed, derived, note, record: leaving.kind };
}

/** Without its inputs: they stand in the record itself, and `compute` names them one by one. */
function computedJson({ name, value, unit, method, source, path, cautions }: ComputedValue): object {
  return { cautions, method, name, path, source, unit, value: inOrder(value) };
}

function inOrder(value: unknown): unknown {
  if (typeof value === 'number') return Number(computedDecimal(value));
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(inOrder);
  return Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => compareText(a, b)));
}
