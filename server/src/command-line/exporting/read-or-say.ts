import type { Input } from '../find-notes.ts';
import { readInput } from '../read-input.ts';
import { FileProblem, type World } from '../world.ts';

/** The text of an input, or undefined and a sentence that says why. */
export async function readOrSay(
  input: Input,
  world: World,
  say: (problem: string) => void,
): Promise<string | undefined> {
  try {
    return await readInput(input, world);
  } catch (error) {
    if (!(error instanceof FileProblem)) throw error;
    say(error.message);
    return undefined;
  }
}
