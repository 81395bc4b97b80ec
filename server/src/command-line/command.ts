import type { Options, Values } from './options.ts';
import type { ExitCode, World } from './world.ts';

/** A command as the runner sees it. */
export interface Command {
  /** What stands behind the name, such as PATH... */
  readonly operands: string;
  readonly about: string;
  readonly options: Options;
  run(given: { readonly values: Values<Options>; readonly paths: readonly string[] }, world: World): Promise<ExitCode>;
}

/** Makes a command whose `run` knows the types of its own options. */
export function defineCommand<const O extends Options>(command: {
  readonly operands: string;
  readonly about: string;
  readonly options: O;
  run(given: { readonly values: Values<O>; readonly paths: readonly string[] }, world: World): Promise<ExitCode>;
}): Command {
  return { ...command, run: (given, world) => command.run({ ...given, values: given.values as Values<O> }, world) };
}
