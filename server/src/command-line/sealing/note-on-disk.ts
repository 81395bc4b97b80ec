import { oneNote, type CommandWords, type OneNote } from '../one-note.ts';
import { WrongUse, type World } from '../world.ts';

export interface NoteOnDisk extends Pick<OneNote, 'reading' | 'around'> {
  readonly file: string;
  /** Absolute. */
  readonly path: string;
  /** The folder of its set. */
  readonly setFolder: string;
}

/** The one note on disk that a command seals or writes beside. */
export async function noteOnDisk(
  paths: readonly string[],
  words: CommandWords,
  department: string | undefined,
  world: World,
): Promise<NoteOnDisk> {
  const { input, reading, sets, around } = await oneNote(paths, words, department, world);
  const { file, path } = input;
  if (path === null) throw new WrongUse(`${words.name} takes a note on disk, not standard input.`);
  return { file, path, reading, around, setFolder: sets.rootAround(path).folder };
}
