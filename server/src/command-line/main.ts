import { machine } from './checking/machine.ts';
import { nodeFiles, reasonOf } from './node-files.ts';
import { runCommand } from './run-command.ts';
import { textOf } from './whole-file.ts';
import type { Sink } from './world.ts';

/** A run whose words did not all arrive must not end as if they had. */
let isCutShort = false;

/** Whoever reads our output may stop reading, which is no fault; any other failure is said, without a word of a note. */
function onFailure(name: 'stdout' | 'stderr', error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE' || isCutShort) return;
  isCutShort = true;
  process.exitCode = 2;
  if (name === 'stdout')
    sink('stderr').write(
      `Standard output could not be written: ${reasonOf(error)}. What arrived there is not whole.\n`,
    );
}

/** A stream is opened when it is first used: a run that says nothing needs none. */
function sink(name: 'stdout' | 'stderr'): Sink {
  let opened: NodeJS.WriteStream | undefined;
  const open = () => {
    if (opened !== undefined) return opened;
    opened = process[name];
    opened.on('error', (error: NodeJS.ErrnoException) => onFailure(name, error));
    return opened;
  };
  return {
    write: (data) => void (data.length > 0 && open().write(data)),
    get colour() {
      return open().isTTY && process.env['NO_COLOR'] === undefined;
    },
  };
}

async function stdin(): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of process.stdin) parts.push(Buffer.from(part as Uint8Array));
  return textOf(Buffer.concat(parts), 'send it as UTF-8');
}

void runCommand(process.argv.slice(2), {
  stdin,
  stdout: sink('stdout'),
  stderr: sink('stderr'),
  files: nodeFiles,
  folder: process.cwd(),
  now: () => new Date(),
  ...machine(__filename),
}).then((code) => {
  process.exitCode = isCutShort ? 2 : code;
});
