import { readNote } from '../note/reading/read-note.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { isDepartmentName } from './file-names.ts';
import { findNotes, type Input } from './find-notes.ts';
import { NoteSets } from './note-sets.ts';
import { readInput } from './read-input.ts';
import { FileProblem, WrongUse, type World } from './world.ts';

export interface OneNote {
  readonly input: Input;
  readonly reading: NoteReading;
  readonly sets: NoteSets;
  readonly around: ReturnType<NoteSets['around']>;
}

/** What the command is called, and what it does as reports say it: “show”, “showing”. */
export interface CommandWords {
  readonly name: string;
  readonly doing: string;
}

/** The one note that a command works on, with its department and its set. */
export async function oneNote(
  paths: readonly string[],
  { name, doing }: CommandWords,
  department: string | undefined,
  world: World,
): Promise<OneNote> {
  const [path] = paths;
  if (path === undefined || paths.length > 1) throw new WrongUse(`Say which one note: sideport ${name} PATH.`);
  const { inputs, missing } = await findNotes([path], world);
  const [input] = inputs;
  if (input === undefined) throw new FileProblem(missing.join('\n'));
  if (inputs.length > 1) throw new WrongUse(`${path} holds ${inputs.length} files; ${doing} takes one note.`);
  if (input.path !== null && isDepartmentName(input.path)) {
    throw new WrongUse(`${input.file} is a department file; ${doing} takes a note.`);
  }
  const reading = readNote(await readInput(input, world));
  const sets = new NoteSets(world, department);
  return { input, reading, sets, around: sets.around(input, reading) };
}

export const notANote = ({ file }: Input): FileProblem =>
  new FileProblem(`${file}: this is not a note. sideport check says why.`);
