import { Lately } from '../../lately.ts';
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
  /** Those that have usual limits. */
  readonly limited: readonly PlannedValue[];
}

const walks = new Lately<NoteReading, Walk>();

/** All values of a note: walked once, however many checks ask. */
export function walk(reading: NoteReading): Walk {
  const known = walks.get(reading);
  if (known !== undefined) return known;
  const values: PlannedValue[] = [];
  const prose: PlannedValue[] = [];
  const limited: PlannedValue[] = [];
  for (const value of reading.values) {
    const plan = planOfValue(reading, value);
    if (plan === undefined) continue;
    // Written out: spreading two hundred values takes longer than all checks of a note.
    const planned = { field: value.field, style: value.style, plan };
    values.push(planned);
    if (plan.guide.prose === true) prose.push(planned);
    if (plan.guide.usual !== undefined) limited.push(planned);
  }
  const made = { values, prose, limited };
  walks.set(reading, made);
  return made;
}
