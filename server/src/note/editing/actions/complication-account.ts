import type { Operation, Path, Span } from '@sideport/schemas';
import { branchOf, childPlan, type Addition } from '../../edits/additions.ts';
import { insertAll, insertValues } from '../../edits/insert-values.ts';
import { columnOf, lineAt, lineEnding } from '../../edits/lines.ts';
import { joined } from '../../edits/marked-lines.ts';
import { colonBefore } from '../../edits/replace-value.ts';
import { writtenBehind } from '../../edits/written-field.ts';
import type { Edit } from '../../remark.ts';
import { planFor, spotAt, spotOf } from '../spots.ts';
import type { NoteReading } from '../../reading/note-reading.ts';
import type { Action, ActionSource } from './action.ts';

/** A complication is recorded with what happened and what was done: begin the account where it is missing. */
export const recordAccount: ActionSource = ({ reading }, offset) => {
  if (reading.kind !== 'operation') return [];
  const aim = spotAt(reading.tree, reading.kind, offset);
  const section = aim?.spot.path[0];
  if (section === 'capsule-state') return newComplications(reading, reading.note);
  return section === 'complications' ? missingAccount(reading, reading.note, offset) : [];
};

function missingAccount(reading: NoteReading, note: Operation, offset: number): readonly Action[] {
  const item = note.complications?.items.find(({ $: { span } }) => span.start <= offset && offset <= span.end);
  if (item === undefined) return [];
  const path = [...item.$.path, 'account'];
  // Written already, if only its name.
  if (spotOf(reading.tree, reading.kind, path).path.length === path.length) return [];
  const edits = insertValues(reading, [{ path, value: '', as: 'open' }]);
  return [{ title: "Record the complication's account", safety: 'needs-review', edits }];
}

/** What the state of the capsule says went wrong, in the terms of the complications. */
function wentWrong(note: Operation): readonly string[] {
  const state = note['capsule-state'];
  const said: string[] = [];
  if (state?.anterior?.value.startsWith('torn') === true) said.push('anterior capsule tear');
  if (state?.posterior?.value === 'torn') said.push('posterior capsule rupture');
  if (state?.zonule?.value === 'ruptured') said.push('zonular dialysis');
  if (state?.vitreous?.value === 'prolapsed') said.push('vitreous loss');
  return said;
}

function newComplications(reading: NoteReading, note: Operation): readonly Action[] {
  const recorded = new Set(note.complications?.items.map(({ what }) => what?.value));
  return wentWrong(note)
    .filter((what) => !recorded.has(what as never))
    .map((what) => ({
      title: `Record the account of the ${what}`,
      safety: 'needs-review',
      edits: added(reading, note, what),
    }));
}

/** The fields of a new entry, with its name and the rest left to write. */
function entry(what: string, path: Path): readonly Addition[] {
  const open = ['when', 'action', 'account'].map((key): Addition => ({ path: [...path, key], value: '', as: 'open' }));
  return [{ path: [...path, 'what'], value: what, as: 'value' }, ...open];
}

function added(reading: NoteReading, note: Operation, what: string): readonly Edit[] {
  const { key, node } = spotOf(reading.tree, reading.kind, ['complications']);
  if (key !== null && node?.kind === 'scalar')
    return note.$.said['complications'] === undefined ? [] : inPlaceOfNone(reading, key, node.span, what);
  const at = key === null || node === null ? 0 : node.kind === 'list' ? node.items.length : 1;
  return insertAll(reading, entry(what, ['complications', at]));
}

/** “none” stood there: it makes room for the entry, its comment stays. */
function inPlaceOfNone(reading: NoteReading, key: Span, none: Span, what: string): readonly Edit[] {
  const { text } = reading;
  const start = colonBefore(reading, key, none);
  if (start === undefined) return [];
  const plan = planFor('operation');
  const branch = branchOf(entry(what, ['complications', 0]), plan).below.get('complications');
  const complications = childPlan(plan, 'complications');
  const written = branch && writtenBehind(branch, complications, columnOf(text, key.start), lineEnding(text));
  const { end } = lineAt(text, none.end);
  return joined([
    { span: { start, end: none.end }, text: '' },
    { span: { start: end, end }, text: written?.below ?? '' },
  ]);
}
