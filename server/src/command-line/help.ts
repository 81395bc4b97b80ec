import type { Command } from './command.ts';
import type { CommandEntry } from './commands.ts';
import type { Option } from './options.ts';

const CAUTION =
  'Sideport records and computes; it does not decide. Check every value against the biometry print-out and the\n' +
  'lens box, and follow local policy and licensed practice.\n';

/** All commands, one a line. */
export function overview(commands: readonly CommandEntry[]): string {
  return `sideport COMMAND [PATH...] [--option VALUE]\n\n${table(commands.map(({ name, summary }) => [name, summary]))}\nMore on one of them: sideport COMMAND --help\n\n${CAUTION}`;
}

export function commandHelp(name: string, command: Command): string {
  const options = Object.entries(command.options);
  const rows = options.map(([key, option]) => [`--${key}${valueName(option)}`, about(option)] as const);
  return `sideport ${name} ${command.operands}\n\n${command.about}\n${options.length === 0 ? '' : `\n${table(rows)}`}`;
}

function valueName(option: Option): string {
  return option.kind === 'flag' ? '' : ` ${option.value}`;
}

function about(option: Option): string {
  if (option.kind !== 'choice') return option.about;
  const choices = option.choices.map((choice) => (choice === option.fallback ? `${choice} (usual)` : choice));
  return `${option.about}: ${choices.join(', ')}`;
}

function table(rows: readonly (readonly [string, string])[]): string {
  const width = Math.max(...rows.map(([first]) => first.length));
  return rows.map(([first, second]) => `  ${first.padEnd(width)}  ${second}\n`).join('');
}
