import { resolve } from 'node:path';
import { FileProblem, type World } from './world.ts';

/** Writes to a file, or to standard output when none is named. */
export function writeOutput(data: string | Uint8Array, file: string | undefined, world: World): void {
  if (file === undefined) {
    world.stdout.write(data);
    return;
  }
  try {
    world.files.write(resolve(world.folder, file), data);
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${file}: ${error.message}.`) : error;
  }
}
