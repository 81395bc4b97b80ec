import type { Path, Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';

/** What a name of a set names. */
export type NamedThing = 'note' | 'staff' | 'lens' | 'patient';

/** One place where something of the set is named. */
export interface Mention {
  readonly thing: NamedThing;
  readonly name: string;
  /** The value, with its quotes. */
  readonly span: Span;
  readonly path: Path;
  /** Where the thing itself is described: a note's own id, an entry of the department's lists. */
  readonly defines: boolean;
}

const LENS = /(?:^|\.)(?:lens|spare-lens|lens-verified)\.model$/u;

/** Whether a field of an operation names a member of staff; `where` is its path without positions in lists. */
export function namesStaff(where: string): boolean {
  // A review is done “by” a clinic, in words; a patient's reference is no member of staff.
  if (where === 'reviews.by' || where === 'patient.ref') return false;
  return /(?:^|\.)(?:ref|by|given-by|anaesthetist)$/u.test(where);
}

/** Every mention of a note, a member of staff, a lens model or a patient, in the order of the text. */
export function mentionsIn(reading: NoteReading): readonly Mention[] {
  return reading.values.flatMap(({ field: { path, span, text } }): Mention[] => {
    const where = path.filter((step) => typeof step === 'string').join('.');
    const named = reading.kind === 'department' ? inDepartment(where) : inNote(where);
    return named === undefined ? [] : [{ ...named, name: text, span, path }];
  });
}

function inDepartment(where: string): { thing: NamedThing; defines: boolean } | undefined {
  if (where === 'staff.ref') return { thing: 'staff', defines: true };
  return where === 'lenses.model' ? { thing: 'lens', defines: true } : undefined;
}

function inNote(where: string): { thing: NamedThing; defines: boolean } | undefined {
  if (where === 'id') return { thing: 'note', defines: true };
  if (where === 'operation' || where === 'amends') return { thing: 'note', defines: false };
  if (where === 'patient.ref') return { thing: 'patient', defines: false };
  if (namesStaff(where)) return { thing: 'staff', defines: false };
  return LENS.test(where) ? { thing: 'lens', defines: false } : undefined;
}

/** The mention that an offset lies in. */
export function mentionAt(reading: NoteReading, offset: number): Mention | undefined {
  return mentionsIn(reading).find(({ span }) => span.start <= offset && offset <= span.end);
}

export function isSameThing(a: Mention, b: { readonly thing: NamedThing; readonly name: string }): boolean {
  return a.thing === b.thing && a.name === b.name;
}
