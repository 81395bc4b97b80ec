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
    'Writes an amendment to a final note as a file of its own beside it: the field, the old and the new value, the reason,\n' +
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
    const { file, path, reading, around } = await noteOnDisk(paths, WORDS, values.department, world);
    if (reading.kind !== 'operation')
      throw new WrongUse(`${file} is not the note of an operation; amendments are made to those.`);
    if (reading.status !== 'final')
      throw new WrongUse(`${file} is not final (status: ${reading.status}): change the note itself.`);
    const id = noteId(reading);
    if (id === '') throw new FileProblem(`${file}: the note has no id that an amendment could name.`);
    const number = freeNumber(
      (candidate) =>
        world.files.kind(target(path, candidate)) !== null || notesWithId(around.set, `${id}-A${candidate}`).length > 0,
    );
    const made = amendmentText({
      note: reading.note,
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

const WORDS = { name: 'amend', doing: 'amending' };

const target = (note: string, number: number): string =>
  note.replace(/\.opnote\.yaml$/u, `.amend-${number}.opnote.yaml`);

function freeNumber(taken: (number: number) => boolean): number {
  let number = 1;
  while (taken(number)) number += 1;
  return number;
}
