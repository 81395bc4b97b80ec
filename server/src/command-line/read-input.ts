import type { Input } from './find-notes.ts';
import { FileProblem, type World } from './world.ts';

/** The text of an input. Throws FileProblem with the name of the file. */
export async function readInput({ path, file }: Input, world: World): Promise<string> {
  try {
    return path === null ? await world.stdin() : world.files.read(path);
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${file}: ${error.message}.`) : error;
  }
}
