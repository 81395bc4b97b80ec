import { machine } from './checking/machine.ts';
import { nodeFiles } from './node-files.ts';
import { runCommand } from './run-command.ts';
import type { Sink } from './world.ts';

/** A stream is opened when it is first used: a run that says nothing needs none. */
function sink(name: 'stdout' | 'stderr'): Sink {
  let opened: NodeJS.WriteStream | undefined;
  const open = () => {
    if (opened !== undefined) return opened;
    opened = process[name];
    // Whoever reads our output may stop reading; that is no fault.
    opened.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
    });
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
  process.stdin.setEncoding('utf8');
  let text = '';
  for await (const part of process.stdin) text += String(part);
  return text;
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
  process.exitCode = code;
});
