import { nearest } from '@sideport/schemas/notation/near-miss.ts';
import { version } from '../../package.json';
import { commands } from './commands.ts';
import { readOptions } from './options.ts';
import { FileProblem, WrongUse, type ExitCode, type World } from './world.ts';

/**
 * Runs one command line, without the name of the program. Never throws: what goes wrong is said on stderr and ends
 * with 2.
 */
export async function runCommand(words: readonly string[], world: World): Promise<ExitCode> {
  try {
    return await run(words, world);
  } catch (error) {
    world.stderr.write(`${reason(error)}\n`);
    return 2;
  }
}

async function run([name, ...rest]: readonly string[], world: World): Promise<ExitCode> {
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
    const { overview } = await import('./help.ts');
    const asked = name !== undefined;
    (asked ? world.stdout : world.stderr).write(overview(commands));
    return asked ? 0 : 2;
  }
  if (name === '--version' || name === '-v') {
    world.stdout.write(`${version}\n`);
    return 0;
  }
  const entry = commands.find((candidate) => candidate.name === name);
  if (entry === undefined) throw new WrongUse(unknownCommand(name));
  const command = await entry.load();
  try {
    const given = readOptions(command.options, rest);
    if (given.help) {
      const { commandHelp } = await import('./help.ts');
      world.stdout.write(commandHelp(name, command));
      return 0;
    }
    return await command.run(given, world);
  } catch (error) {
    if (error instanceof WrongUse) throw new WrongUse(`${error.message}\nMore: sideport ${name} --help`);
    throw error;
  }
}

function unknownCommand(name: string): string {
  const near = nearest(
    name,
    commands.map((entry) => entry.name),
  );
  const hint = near === undefined ? '' : ` Did you mean ${near}?`;
  return `There is no command ${name}.${hint}\nAll commands: sideport --help`;
}

/** What a note says must not reach an error report: only our own words are printed, never those of another error. */
function reason(error: unknown): string {
  if (error instanceof WrongUse || error instanceof FileProblem) return error.message;
  const kind = error instanceof Error ? error.name : typeof error;
  return `Sideport failed (${kind}). The fault is in the program, not in the note; please report it.`;
}
