// Drives the packaged extension in a real VS Code, and the language server from Neovim and Emacs.   npm run test:editor
// Installs what is missing first; does not install again what is there.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installEditorHost } from '../tests/editor/host/install.mjs';
import { installLibraries, root } from './installed.mjs';

const programs = ['chromium', 'neovim', 'emacs-nox', 'elpa-eglot', 'elpa-yaml-mode'];

function run(command, ...args) {
  const { status, error } = spawnSync(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  if (status !== 0) throw error ?? new Error(`${command} ${args.join(' ')} ended with ${status}`);
}

function isInstalled(name) {
  const asked = spawnSync('dpkg-query', ['--show', '--showformat=${db:Status-Status}', name], { encoding: 'utf8' });
  if (asked.error) throw new Error('The editor tests take their browser and editors from Debian packages.');
  return asked.stdout === 'installed';
}

function installPrograms() {
  const missing = programs.filter((name) => !isInstalled(name));
  if (missing.length === 0) return;
  const aptGet = process.getuid() === 0 ? ['apt-get', '--quiet'] : ['sudo', 'apt-get', '--quiet'];
  run(...aptGet, 'update');
  run(...aptGet, 'install', '--yes', '--no-install-recommends', ...missing);
}

installLibraries();
installPrograms();
installEditorHost();
run('node', 'tools/build.mjs', '--package');

const scratch = mkdtempSync(join(tmpdir(), 'editor-results-'));
const results = join(scratch, 'results.json');
const vitest = join(root, 'node_modules/vitest/vitest.mjs');
const options = ['--config', 'tests/editor/vitest.config.ts', '--reporter=default', '--reporter=json'];
const { status } = spawnSync(process.execPath, [vitest, 'run', ...options, `--outputFile.json=${results}`], {
  cwd: root,
  stdio: ['ignore', 'inherit', 'inherit'],
});
const counted = existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : {};
rmSync(scratch, { recursive: true });
const failed = counted.numFailedTests ?? 0;
// A file that could not be loaded at all has no test that failed.
console.log(`${counted.numPassedTests ?? 0} passed, ${status === 0 ? failed : Math.max(1, failed)} failed`);
process.exitCode = status === 0 ? 0 : 1;
