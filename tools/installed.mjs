// Installs the libraries when they are missing; leaves alone what is there.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

export function installLibraries() {
  if (existsSync(join(root, 'node_modules/.package-lock.json'))) return;
  // On Windows npm is a script of the shell.
  const { status } = spawnSync('npm', ['ci'], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  if (status !== 0) throw new Error('The libraries could not be installed: see what npm said above.');
}

/** Runs a program of Node's with what it prints shown, and gives its exit code. */
export function runNode(...words) {
  return spawnSync(process.execPath, words, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] }).status ?? 1;
}
