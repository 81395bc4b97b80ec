import type { Department, FollowUp, Operation } from '@sideport/schemas';
import { amendmentText } from '../../note/editing/amendment-text.ts';
import { noteId } from '../../note/seal/seal-note.ts';
import { notesWithId } from '../../note/set/note-set.ts';
import { defineCommand } from '../command.ts';
import { withOffset } from '../sealing/local-time.ts';
import { noteOnDisk } from '../sealing/note-on-disk.ts';
import { writeOutput } from '../write-output.ts';
import { FileProblem, WrongUse } from '../world.ts';

const KINDS = { addendum: 'addendum', correction: 'correction', 'late-entry': 'late entry' } as const;

export const amend = defineCommand({
  operands: 'PATH',
  about:
    'Writes an amendment to the final note of an operation or a visit as a file of its own beside it: the field, the old and the new value, the reason,\n' +
    'author and time. The note itself is not touched. Read the amendment, then seal it.',
  options: {
    kind: {
      kind: 'choice',
      value: 'KIND',
      choices: ['correction', 'addendum', 'late-entry'],
      fallback: 'correction',
      about: 'what kind of amendment it is',
    },
    field: { kind: 'text', value: 'FIELD', about: 'the field to put right, by its path, such as lens.serial' },
    now: { kind: 'text', value: 'VALUE', about: 'what it should say' },
    text: { kind: 'text', value: 'TEXT', about: 'new information in words, for an addendum or late entry' },
    reason: { kind: 'text', value: 'TEXT', about: 'why the note is amended' },
    by: { kind: 'text', value: 'REF', about: 'the staff reference of the author' },
    department: { kind: 'text', value: 'FILE', about: 'uses this department file' },
  },
  run: async ({ values, paths }, world) => {
    const { field, now, text, reason, by } = values;
    if (reason === undefined || by === undefined) throw new WrongUse('Say why and who: --reason TEXT --by REF.');
    if ((field === undefined) !== (now === undefined))
      throw new WrongUse('A field and its new value go together: --field FIELD --now VALUE.');
    if (field === undefined && text === undefined)
      throw new WrongUse('Say what is amended: --field FIELD --now VALUE, or --text TEXT.');
    if (field === undefined && values.kind === 'correction')
      throw new WrongUse(
        'A correction names the field that was wrong: --field FIELD --now VALUE. Words alone are new: --kind addendum, or --kind late-entry for what was omitted.',
      );
    const { file, path, reading, around } = await noteOnDisk(paths, WORDS, values.department, world);
    if (reading.kind !== 'operation' && reading.kind !== 'follow-up')
      throw new WrongUse(`${file} is no note of an operation or a visit; amendments are made to those.`);
    if (reading.status !== 'final')
      throw new WrongUse(`${file} is not final (status: ${reading.status}): change the note itself.`);
    const department = around.department ?? null;
    if (!isKnown(by, reading.note, department))
      throw new WrongUse(
        `--by ${by} is neither in the list of staff (${around.departmentFile ?? 'the department file'}) nor named in the note. Correct the reference, or add the person to the list.`,
      );
    const id = noteId(reading);
    if (id === '') throw new FileProblem(`${file}: the note has no id that an amendment could name.`);
    const number = freeNumber(
      (candidate) =>
        world.files.kind(target(path, candidate)) !== null || notesWithId(around.set, `${id}-A${candidate}`).length > 0,
    );
    const made = amendmentText({
      amended: reading,
      id: `${id}-A${number}`,
      kind: KINDS[values.kind],
      at: withOffset(world.now()),
      by,
      reason,
      ...(field !== undefined && now !== undefined ? { change: { field, now } } : {}),
      ...(text === undefined ? {} : { text }),
    });
    if ('because' in made) throw new WrongUse(`No amendment was written: ${made.because}.`);
    writeOutput(made.text, target(file, number), world);
    world.stdout.write(`${target(file, number)}\n`);
    world.stderr.write(
      `Read the amendment, then seal it: sideport seal ${target(file, number)} --signer ${by} --key FILE\n`,
    );
    return 0;
  },
});

/** Whether somebody is in the list of staff, where there is one, or took part in what is amended. */
function isKnown(ref: string, note: Operation | FollowUp, department: Department | null): boolean {
  const staff = department?.staff?.items ?? [];
  const named = [
    ...staff.map((person) => person.ref),
    ...('team' in note ? (note.team?.items ?? []).map((person) => person.ref) : []),
    ...('by' in note ? [note.by] : []),
    ...(note.signed?.items ?? []).map(({ by }) => by),
  ];
  return staff.length === 0 || named.some((one) => one?.value === ref);
}

const WORDS = { name: 'amend', doing: 'amending' };

const target = (note: string, number: number): string =>
  note.replace(/\.opnote\.yaml$/u, `.amend-${number}.opnote.yaml`);

function freeNumber(taken: (number: number) => boolean): number {
  let number = 1;
  while (taken(number)) number += 1;
  return number;
}
