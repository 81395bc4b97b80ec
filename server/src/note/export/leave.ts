import { computedValues, recordPlan, type Amendment, type Operation } from '@sideport/schemas';
import type { CodeSetName } from '@sideport/schemas/codes/table.ts';
import { withoutAmended } from '../codes/amended.ts';
import { codingFacts } from '../codes/facts-of-note.ts';
import { withMappedCodes, type MappedCode } from '../codes/code-map.ts';
import { CODING_CAUTION, suggestCodes, type CodeTables } from '../codes/suggest.ts';
import type { CodeSuggestions } from '../codes/suggestion.ts';
import type { ComputedNote, ComputedValue } from '../computing/computed.ts';
import { deidentifyRecord, type Anchor, type Deidentification } from '../deidentify/deidentify.ts';
import type { RemovalCount } from '../deidentify/removal.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import { amendmentsOf } from '../set/amendments-of.ts';
import { notesWithId, type NoteFacts, type NoteSet } from '../set/note-set.ts';
import type { Derived, Leaving } from './leaving.ts';

export interface LeavingOptions {
  readonly codes?: { readonly set: CodeSetName; readonly tables: CodeTables; readonly map: readonly MappedCode[] };
  readonly deidentify?: Deidentification;
}

/** From this age on only that it is reached may be told. Source: 45 CFR 164.514(b)(2)(i)(C). */
const AGE_CAP = 90;
const TIMES = new Set<string>(computedValues.filter(({ group }) => group === 'time').map(({ name }) => name));

/**
 * A note as it leaves, with its amendments, computed values and codes; identifiers are taken out of all of them alike.
 * @param repeated whether another record of its kind with the same id left before it
 * @returns undefined for a text that is no note
 */
export function leave(
  reading: NoteReading,
  computed: ComputedNote,
  set: NoteSet | null,
  options: LeavingOptions,
  removed: RemovalCount,
  repeated = false,
): Leaving | undefined {
  const { deidentify } = options;
  const values = deidentify ? computed.values.filter((value) => mayLeave(value)) : computed.values;
  if (reading.kind === 'operation') {
    const { note } = reading;
    const anchor = { patient: note.patient?.ref?.value, operationDate: note.date?.value };
    const amendments = amendmentsOf(set, note.id?.value);
    const left = deidentify ? deidentifyRecord(note, recordPlan('operation'), deidentify, anchor, removed) : note;
    const leavingAmendments = amendmentsLeaving(amendments, deidentify, anchor, removed);
    const found = derived(computed.values, deidentify === undefined ? undefined : removed);
    const codes = options.codes && codesOf(left, leavingAmendments, found, options.codes);
    return {
      kind: 'operation',
      note: left,
      computed: values,
      derived: found,
      ...(codes ? { codes } : {}),
      amendments: leavingAmendments,
      repeated,
    };
  }
  if (reading.kind === 'follow-up') {
    const { note } = reading;
    const anchor = anchorBy(set, note.operation?.value, note.patient?.ref?.value);
    return {
      kind: 'follow-up',
      note: deidentify ? deidentifyRecord(note, recordPlan('follow-up'), deidentify, anchor, removed) : note,
      computed: values,
      amendments: amendmentsLeaving(amendmentsOf(set, note.id?.value), deidentify, anchor, removed),
      repeated,
    };
  }
  if (reading.kind !== 'amendment') return undefined;
  const { note } = reading;
  const amends = note.amends?.value;
  const anchor = anchorBy(set, amends, note.patient?.ref?.value);
  return {
    kind: 'amendment',
    note: deidentify ? deidentifyRecord(note, recordPlan('amendment'), deidentify, anchor, removed) : note,
    withNote: hasAmended(set, amends),
  };
}

function amendmentsLeaving(
  amendments: readonly Amendment[],
  deidentify: Deidentification | undefined,
  anchor: Anchor,
  removed: RemovalCount,
): readonly Amendment[] {
  if (deidentify === undefined) return amendments;
  return amendments.map((one) => deidentifyRecord(one, recordPlan('amendment'), deidentify, anchor, removed));
}

/** Whether a set has the operation or visit that an amendment names. */
export function hasAmended(set: NoteSet | null, amends: string | undefined): boolean {
  return set !== null && amends !== undefined && notesWithId(set, amends).some(({ record }) => record !== 'amendment');
}

/** The operation that another record points to says what dates are counted from and whose they are. */
function anchorBy(set: NoteSet | null, id: string | undefined, patient: string | undefined): Anchor {
  const operation = operationWithId(set, id);
  return { patient: patient ?? operation?.patient, operationDate: operation?.date };
}

function operationWithId(set: NoteSet | null, id: string | undefined): NoteFacts | undefined {
  return set && id !== undefined ? notesWithId(set, id).find(({ record }) => record === 'operation') : undefined;
}

/** Ages and dates are told in their own way; a text that was composed could quote one. */
function mayLeave({ name, value, display }: ComputedValue): boolean {
  if (TIMES.has(name) && name !== 'operation-duration') return false;
  return typeof value !== 'string' || !/\d{4}-\d{2}/u.test(display);
}

function derived(values: readonly ComputedValue[], removed: RemovalCount | undefined): Derived {
  const of = (name: string): ComputedValue['value'] | undefined => values.find((value) => value.name === name)?.value;
  const [age, duration, rupture] = [of('age-at-operation'), of('operation-duration'), of('posterior-capsule-rupture')];
  const capped = removed !== undefined && typeof age === 'number' && age >= AGE_CAP;
  if (capped) removed.add('age', 'age capped');
  return {
    ...(typeof age === 'number' ? { ageYears: String(capped ? AGE_CAP : age) } : {}),
    ...(typeof rupture === 'boolean' ? { capsuleRupture: rupture } : {}),
    ...(typeof duration === 'number' ? { durationMinutes: String(duration) } : {}),
  };
}

function codesOf(
  note: Operation,
  amendments: readonly Amendment[],
  { ageYears }: Derived,
  { set, tables, map }: NonNullable<LeavingOptions['codes']>,
): CodeSuggestions {
  if (note.status?.value === 'planned') {
    const why = 'the operation has not been done';
    return {
      suggestions: [],
      notCoded: [{ what: 'the whole operation', why, fields: ['status'] }],
      compared: [],
      caution: CODING_CAUTION,
    };
  }
  const facts = codingFacts(note, ageYears === undefined ? undefined : Number(ageYears));
  const suggested = withoutAmended(suggestCodes(facts, set, tables), amendments);
  return { ...suggested, suggestions: withMappedCodes(suggested.suggestions, map) };
}
