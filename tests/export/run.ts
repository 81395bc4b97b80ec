import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nodeFiles } from '../../server/src/command-line/node-files.ts';
import { runCommand } from '../../server/src/command-line/run-command.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
export const SOUND = join(root, 'samples/sound');

/** The operations among the sound samples, and the other records. */
export const samples = readdirSync(SOUND).filter((name) => name.endsWith('.opnote.yaml'));

export const emptyFolder = (): string => mkdtempSync(join(tmpdir(), 'leaving-'));

/** Runs one command line on the real disk, at a fixed moment. */
export const run = (...words: readonly string[]) => runAt('2031-07-01T08:00:00Z', ...words);

/** Runs one command line on the real disk, at this moment. */
export async function runAt(moment: string, ...words: readonly string[]) {
  const out: Uint8Array[] = [];
  let err = '';
  const code = await runCommand(words, {
    stdin: () => Promise.resolve(''),
    stdout: { write: (data) => void out.push(typeof data === 'string' ? Buffer.from(data) : data), colour: false },
    stderr: { write: (data) => void (err += String(data)), colour: false },
    files: nodeFiles,
    folder: root,
    now: () => new Date(moment),
  });
  return { code, bytes: Buffer.concat(out), out: Buffer.concat(out).toString('utf8'), err };
}

/** Runs an export of notes that may have errors or places that cannot be read, and gives what it said. */
export const exportedAnyway = (...words: readonly string[]) => run('export', ...words);

/** Runs an export that must succeed, and gives what it said. */
export async function exported(...words: readonly string[]) {
  const result = await run('export', ...words);
  if (result.code !== 0) throw new Error(`The export ended with ${result.code}: ${result.err}`);
  return result;
}
