import type { ValuePlan } from '@sideport/schemas';
import { planOfValue, type NoteReading, type ReadValue } from '../../reading/note-reading.ts';

export interface PlannedValue extends ReadValue {
  readonly plan: ValuePlan;
}

export interface Walk {
  /** Every value that was read, with what the format knows about it. */
  readonly values: readonly PlannedValue[];
  /** Those written in free words. */
  readonly prose: readonly PlannedValue[];
}

const walks = new WeakMap<NoteReading, Walk>();

/** All values of a note: walked once, however many checks ask. */
export function walk(reading: NoteReading): Walk {
  const known = walks.get(reading);
  if (known !== undefined) return known;
  const values: PlannedValue[] = [];
  for (const value of reading.values) {
    const plan = planOfValue(reading, value);
    if (plan !== undefined) values.push({ ...value, plan });
  }
  const made = { values, prose: values.filter(({ plan }) => plan.guide.prose === true) };
  walks.set(reading, made);
  return made;
}
