import { recordPlan, type RecordKind } from '@sideport/schemas';
import { recordKinds } from '@sideport/schemas/vocabulary/head.ts';
import { insertAll } from '../edits/insert-values.ts';
import { replaceWritten, type Editable } from '../edits/replace-value.ts';
import type { Remark } from '../remark.ts';
import type { MapNode } from './tree.ts';

/** Fields of another kind of record, at least this many more than of the kind that is written, say that the word is wrong. */
const DECISIVE = 3;

/**
 * The kind of record a note is read as: the one written in `record`, unless the note has the fields of another; where
 * nothing understandable is written, the one that its fields fit. What was doubtful is remarked on once.
 */
export function recordKindOf(root: MapNode, note: Editable, remarks: Remark[]): RecordKind {
  const node = root.entries.find(({ key }) => key === 'record')?.value;
  const written = node?.kind === 'scalar' ? node : undefined;
  const reading = written === undefined ? undefined : recordKinds.read(written.text);
  if (written === undefined || reading?.ok !== true) return guessed(root, note, remarks, written !== undefined);
  const declared = reading.value;
  const fitting = fittingKind(root, declared);
  if (fitting === declared) return declared;
  const others = root.entries
    .map(({ key }) => key)
    .filter((key) => !hasField(declared, key) && hasField(fitting, key))
    .map((key) => `“${key}”`);
  remarks.push({
    check: 'record-kind-disagrees',
    severity: 'error',
    message: `Record: it says ${declared}, but the note has ${others.slice(0, DECISIVE).join(', ')}${others.length > DECISIVE ? ` and ${others.length - DECISIVE} more fields` : ''} of ${article(fitting)}; it is read as one. Write “record: ${fitting}”, or take those fields out.`,
    span: written.span,
    path: ['record'],
    related: [],
    fixes: [
      {
        title: `Write “record: ${fitting}”`,
        safety: 'needs-review',
        edits: replaceWritten(note.text, written.span, fitting),
      },
    ],
  });
  return fitting;
}

export function article(kind: RecordKind): string {
  return kind === 'operation' || kind === 'amendment' ? `an ${kind}` : `a ${kind}`;
}

/** The kinds of record that have a field of this name at their top. */
export function kindsWith(key: string): RecordKind[] {
  return KINDS.filter((kind) => hasField(kind, key));
}

const KINDS = ['operation', 'follow-up', 'amendment'] as const satisfies readonly RecordKind[];

function hasField(kind: RecordKind, key: string): boolean {
  return recordPlan(kind).fields.has(key);
}

function fittingKind(root: MapNode, declared: RecordKind): RecordKind {
  const known = (kind: RecordKind): number => root.entries.filter(({ key }) => hasField(kind, key)).length;
  const enough = known(declared) + DECISIVE;
  return KINDS.find((kind) => known(kind) >= enough) ?? declared;
}

function guessed(root: MapNode, note: Editable, remarks: Remark[], isWritten: boolean): RecordKind {
  const keys = new Set(root.entries.map((entry) => entry.key));
  const guess = keys.has('amends') ? 'amendment' : keys.has('operation') ? 'follow-up' : 'operation';
  if (isWritten) return guess;
  const first = root.entries[0];
  const edits = insertAll({ ...note, kind: guess }, [{ path: ['record'], value: guess, as: 'value' }]);
  remarks.push({
    check: 'record-kind-missing',
    severity: 'error',
    message: `The note does not say which kind of record it is; it is read as ${guess}. Write “record: ${guess}” in its head.`,
    span: first?.keySpan ?? root.span,
    path: ['record'],
    related: [],
    fixes: edits.length === 0 ? [] : [{ title: `Write “record: ${guess}”`, safety: 'needs-review', edits }],
  });
  return guess;
}
