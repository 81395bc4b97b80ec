import type { Operation } from '@sideport/schemas';
import { columnOf, lineEnding, STEP } from '../../edits/lines.ts';
import { spotAt, spotOf } from '../spots.ts';
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
  if (item === undefined || item.account !== undefined) return [];
  const { span } = item.$;
  const end = span.start + reading.text.slice(span.start, span.end).trimEnd().length;
  const indent = ' '.repeat(columnOf(reading.text, span.start));
  return [
    {
      title: "Record the complication's account",
      safety: 'needs-review',
      edits: [{ span: { start: end, end }, text: `${lineEnding(reading.text)}${indent}account: ` }],
    },
  ];
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
      edits: [added(reading, what)],
    }));
}

function added(reading: NoteReading, what: string): Action['edits'][number] {
  const { text, tree, kind } = reading;
  const eol = lineEnding(text);
  const spot = spotOf(tree, kind, ['complications']);
  const entry = (column: number) =>
    [`- what: ${what}`, '  when: ', '  action: ', '  account: ']
      .map((line) => `${eol}${' '.repeat(column)}${line}`)
      .join('');
  if (spot.key === null) {
    const end = text.trimEnd().length;
    return { span: { start: end, end }, text: `${eol}complications:${entry(STEP)}` };
  }
  if (spot.node?.kind === 'list') {
    const end = spot.node.span.start + text.slice(spot.node.span.start, spot.node.span.end).trimEnd().length;
    return { span: { start: end, end }, text: entry(columnOf(text, spot.node.span.start)) };
  }
  // “none” stood there, or nothing.
  const colon = text.indexOf(':', spot.key.end) + 1;
  return { span: { start: colon, end: spot.node?.span.end ?? colon }, text: entry(STEP) };
}
