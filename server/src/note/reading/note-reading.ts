import {
  planAt,
  recordPlan,
  type Amendment,
  type Department,
  type Field,
  type FollowUp,
  type Operation,
  type ValuePlan,
} from '@sideport/schemas';
import type { Remark } from '../remark.ts';
import type { Tree } from './tree.ts';

export type Status = 'planned' | 'draft' | 'final';

/** A value that was read, and how it is written in the text. */
export interface ReadValue {
  readonly field: Field<unknown>;
  readonly style: 'plain' | 'single' | 'double' | 'literal' | 'folded';
}

interface Common {
  readonly text: string;
  readonly tree: Tree;
  /** What the writing itself gives cause to remark. */
  readonly remarks: readonly Remark[];
  /** Every value that was read, in the order of the text. */
  readonly values: readonly ReadValue[];
  /** A note without a status is a draft. */
  readonly status: Status;
}

/** What could be read of a text: the typed note by its kind of record, and remarks about the rest. */
export type NoteReading = Common &
  (
    | { readonly kind: 'operation'; readonly note: Operation }
    | { readonly kind: 'follow-up'; readonly note: FollowUp }
    | { readonly kind: 'amendment'; readonly note: Amendment }
    | { readonly kind: 'department'; readonly note: Department }
    | { readonly kind: null; readonly note: null }
  );

/** What the format knows about a value that was read. */
export function planOfValue(reading: NoteReading, { field }: ReadValue): ValuePlan | undefined {
  const plan = reading.kind === null ? undefined : planAt(recordPlan(reading.kind), field.path);
  if (plan?.kind === 'list') return plan.item.kind === 'value' ? plan.item : undefined;
  return plan?.kind === 'value' ? plan : undefined;
}
