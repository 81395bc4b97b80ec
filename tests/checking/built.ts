import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { YearFile } from '../../tools/year/make-year.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The command line and its worker, bundled into a folder of their own as tools/build.mjs bundles them. */
export async function buildCommandLine(): Promise<{ readonly program: string; remove(): void }> {
  const folder = mkdtempSync(join(tmpdir(), 'sideport-built-'));
  await Promise.all(
    [
      ['main.ts', 'sideport.cjs'],
      ['checking/check-worker.ts', 'check-worker.cjs'],
    ].map(([from = '', to = '']) =>
      build({
        absWorkingDir: root,
        entryPoints: [`server/src/command-line/${from}`],
        outfile: join(folder, to),
        bundle: true,
        minify: true,
        platform: 'node',
        target: 'node20.19',
        format: 'cjs',
        logLevel: 'error',
        alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
      }),
    ),
  );
  return { program: join(folder, 'sideport.cjs'), remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** A folder on disk with these files. */
export function folderWith(files: Iterable<YearFile>): string {
  const folder = mkdtempSync(join(tmpdir(), 'sideport-notes-'));
  for (const { file, text } of files) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  return folder;
}

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export function runBuilt(program: string, words: readonly string[], folder: string): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { code: status, out: stdout, err: stderr };
}

/** git in a folder, as an invented person, whatever the machine's own settings are. */
export function git(folder: string, ...words: readonly string[]): string {
  const person = ['-c', 'user.name=Tester', '-c', 'user.email=tester@example.org', '-c', 'commit.gpgsign=false'];
  return execFileSync('git', [...person, ...words], { cwd: folder, encoding: 'utf8' });
}
