import { readNote } from '../../note/reading/read-note.ts';
import type { NoteReading } from '../../note/reading/note-reading.ts';
import type { Surroundings } from '../../note/review.ts';
import type { NoteSet } from '../../note/set/note-set.ts';
import { isDepartmentName } from '../file-names.ts';
import { findNotes } from '../find-notes.ts';
import { NoteSets } from '../note-sets.ts';
import { readInput } from '../read-input.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

export interface OneNote {
  readonly file: string;
  /** Absolute. */
  readonly path: string;
  readonly reading: NoteReading;
  readonly around: Surroundings & { readonly set: NoteSet };
  /** The folder of its set. */
  readonly setFolder: string;
}

/** The one note on disk that a command works on. */
export async function oneNote(
  paths: readonly string[],
  command: string,
  department: string | undefined,
  world: World,
): Promise<OneNote> {
  const [path] = paths;
  if (path === undefined || paths.length > 1) throw new WrongUse(`Say which one note: sideport ${command} PATH.`);
  const { inputs, missing } = await findNotes([path], world);
  const [input] = inputs;
  if (input === undefined) throw new FileProblem(missing.join('\n'));
  if (inputs.length > 1) throw new WrongUse(`${path} holds ${inputs.length} files; ${command} takes one note.`);
  if (input.path === null) throw new WrongUse(`${command} takes a note on disk, not standard input.`);
  if (isDepartmentName(input.path)) throw new WrongUse(`${input.file} is a department file; ${command} takes a note.`);
  const reading = readNote(await readInput(input, world));
  const sets = new NoteSets(world, department);
  return {
    file: input.file,
    path: input.path,
    reading,
    around: sets.around(input, reading),
    setFolder: sets.rootAround(input.path).folder,
  };
}
