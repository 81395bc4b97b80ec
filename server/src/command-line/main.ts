import { machine } from './checking/machine.ts';
import { nodeFiles } from './node-files.ts';
import { runCommand } from './run-command.ts';
import type { Sink } from './world.ts';

function sink(stream: NodeJS.WriteStream): Sink {
  // Whoever reads our output may stop reading; that is no fault.
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return { write: (data) => void stream.write(data), colour: stream.isTTY && process.env['NO_COLOR'] === undefined };
}

async function stdin(): Promise<string> {
  process.stdin.setEncoding('utf8');
  let text = '';
  for await (const part of process.stdin) text += String(part);
  return text;
}

void runCommand(process.argv.slice(2), {
  stdin,
  stdout: sink(process.stdout),
  stderr: sink(process.stderr),
  files: nodeFiles,
  folder: process.cwd(),
  now: () => new Date(),
  ...machine(__filename),
}).then((code) => {
  process.exitCode = code;
});
