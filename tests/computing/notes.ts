import type { Path } from '@sideport/schemas';
import { computeNote, type ComputedNote, type ComputedValue } from '../../server/src/note/computing/compute-note.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { contextOf } from '../../server/src/note/review.ts';
import { factsOf, type NoteSet } from '../../server/src/note/set/note-set.ts';

export interface Around {
  readonly department?: string;
  /** Other notes of the set, by file. */
  readonly files?: Readonly<Record<string, string>>;
  readonly today?: string;
}

/** Computes a note in its surroundings, as the editor and the command line do. */
export function compute(text: string, around: Around = {}, beside?: Path): ComputedNote {
  const { files = {}, department, today = null } = around;
  const read = department === undefined ? undefined : readNote(department, 'department');
  const set: NoteSet = {
    facts: Object.entries(files).flatMap(([file, note]) => factsOf(readNote(note), file) ?? []),
    open: (file) => (files[file] === undefined ? undefined : readNote(files[file])),
  };
  return computeNote(
    contextOf(readNote(text), { department: read?.kind === 'department' ? read.note : null, set, today }),
    beside,
  );
}

/** The one value of a name; at a path, where there are several. */
export function one({ values, notComputed }: ComputedNote, name: string, path?: string): ComputedValue {
  const found = values.filter((value) => value.name === name && (path === undefined || value.path.join('.') === path));
  const [value] = found;
  if (value === undefined || found.length > 1) {
    const why = notComputed.find((each) => each.name === name)?.because;
    throw new Error(`${found.length} values of ${name}${why === undefined ? '' : `: ${why}`}`);
  }
  return value;
}

/** Why a value was not computed. */
export function why({ notComputed }: ComputedNote, name: string): string | undefined {
  return notComputed.find((each) => each.name === name)?.because;
}

/** An operation with some sections; everything in it is invented. */
export const operation = (sections: string): string => `opnote: 1
record: operation
status: final
id: OP-2033-0100
date: 2033-05-17
eye: left
team:
  - role: surgeon
    ref: S-31
    grade: consultant
${sections}`;

export const visit = (sections: string): string => `opnote: 1
record: follow-up
status: final
id: FU-2033-0100-1
operation: OP-2033-0100
date: 2033-06-14
eye: left
${sections}`;

export const department = `sideport: 1
formulas: [SRK/T]
staff:
  - ref: S-31
    role: surgeon
    grade: consultant
    incision-effect:
      - width: 2.2 mm
        site: temporal
        flattening: 0.40 D
        eyes: 70
      - width: 2.2 mm
        site: temporal
        eye: left
        flattening: 0.25 D
        eyes: 12
      - width: 2.8 mm
        site: superior
        flattening: 0.50 D
        eyes: 41
lenses:
  - maker: Halden Optics
    model: HX-1
    optic-diameter: 6.0 mm
    constants:
      a: 118.4
      sf: 1.45
      pacd: 5.20
      a0: 1.527
      a1: 0.4
      a2: 0.1
  - maker: Halden Optics
    model: HL-2
    constants:
      a: 118.4
      a0: 1.527
      a1: 0.4
      a2: 0.1
    minus-constants:
      a0: -1.73
      a1: 0.4
      a2: 0.1
  - maker: Orrin Lens Works
    model: OV-21
    constants:
      a: 118.4
review-schedule:
  - what: pressure
    due: 1 day
    when: always
  - what: dilated peripheral retina
    due: 4 weeks
    when: long eye
  - what: suture
    due: 6 weeks
    when: suture
`;
