import { newDictation } from '../../dictation/dictation.ts';
import { readNote } from '../../reading/read-note.ts';
import { reviewNote, type Review } from '../../review.ts';
import { factsOf, type NoteFacts, type NoteSet } from '../../set/note-set.ts';
import type { Example } from '../check.ts';
import { baseAmendment } from './base-amendment.ts';
import { baseDepartment } from './base-department.ts';
import { baseFollowUp } from './base-follow-up.ts';
import { baseOperation } from './base-operation.ts';
import { composeNote } from './compose.ts';

export interface ExampleRun {
  /** The whole note, its file, and what was said of it. */
  readonly text: string;
  readonly file: string;
  readonly review: Review;
}

type Base = NonNullable<Example['base']>;

const bases: Readonly<Record<Base, { readonly text: string; readonly file: string }>> = {
  operation: { text: baseOperation, file: 'operation.opnote.yaml' },
  'follow-up': { text: baseFollowUp, file: 'follow-up.opnote.yaml' },
  amendment: { text: baseAmendment, file: 'amendment.opnote.yaml' },
  department: { text: baseDepartment, file: 'sideport.yaml' },
  nothing: { text: '', file: 'operation.opnote.yaml' },
};

/** The day on which the examples are reviewed. */
const TODAY = '2031-06-30';

/** Reviews an example as a whole note, together with the other files of its set. */
export function runExample(example: Example): ExampleRun {
  const base = example.base ?? 'operation';
  const file = example.file ?? bases[base].file;
  const text = textOf(example, base);
  if (base === 'department') return { text, file, review: reviewNote(text, { file, today: TODAY }, 'department') };
  const { 'sideport.yaml': departmentLines, ...others } = example.files ?? {};
  const set = setOf({ ...partners(base), ...composed(others), [file]: text });
  const department =
    departmentLines === undefined ? null : readNote(composeNote(baseDepartment, departmentLines), 'department');
  return {
    text,
    file,
    review: reviewNote(text, {
      dictation: newDictation(),
      set,
      file,
      today: TODAY,
      department: department?.kind === 'department' ? department.note : null,
      departmentFile: department === null ? null : bases.department.file,
    }),
  };
}

function textOf(example: Example, base: Base): string {
  if (base === 'nothing') return example.note.repeat(example.times ?? 1);
  return composeNote(bases[base].text, example.note);
}

/** A follow-up and an amendment stand beside the operation they point to. */
function partners(base: Base): Record<string, string> {
  return base === 'follow-up' || base === 'amendment' ? { [bases.operation.file]: baseOperation } : {};
}

function composed(files: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(files).map(([name, lines]) => {
      const kind = /^record: (follow-up|amendment)$/mu.exec(lines)?.[1];
      const base = kind === 'follow-up' || kind === 'amendment' ? kind : 'operation';
      return [name, composeNote(bases[base].text, lines)];
    }),
  );
}

function setOf(files: Readonly<Record<string, string>>): NoteSet {
  const readings = new Map(Object.entries(files).map(([name, text]) => [name, readNote(text)]));
  return {
    facts: [...readings]
      .map(([name, reading]) => factsOf(reading, name))
      .filter((facts): facts is NoteFacts => facts !== undefined),
    open: (name) => readings.get(name),
  };
}
