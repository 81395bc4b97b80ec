// What the scripts that measure many notes share: a bundle, the notes of an invented year, and a run that measures itself.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** A folder to measure in: programs are bundled into it, and runs leave their report there. */
export class Bench {
  constructor(work) {
    this.work = work;
    writeFileSync(
      join(work, 'usage.cjs'),
      `process.on('exit', () => { const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
require('node:fs').writeFileSync(process.env.USAGE_REPORT, JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1e6, mb: maxRSS / 1024 })); });`,
    );
  }

  async bundle(from, to, format) {
    await build({
      absWorkingDir: root,
      entryPoints: [from],
      outfile: join(this.work, to),
      bundle: true,
      minify: true,
      platform: 'node',
      target: 'node20.19',
      format,
      // Large, and only for printed pages.
      external: ['pdfkit', 'svg-to-pdfkit'],
      alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
      logLevel: 'warning',
    });
  }

  /** Writes exactly so many notes of the invented year, with the department file. */
  async writeNotes(folder, count) {
    const { makeYear } = await import(pathToFileURL(join(this.work, 'make-year.mjs')).href);
    let written = 0;
    for (const { file, text } of makeYear({ operations: count })) {
      if (written > count) break;
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), text);
      written += 1;
    }
  }

  /** Runs a program to its end: wall time, processor time and the most memory it held, as it measured itself. */
  measured(program, words, folder) {
    const report = join(this.work, 'usage.json');
    const start = process.hrtime.bigint();
    const { status, stderr } = spawnSync(process.execPath, ['-r', join(this.work, 'usage.cjs'), program, ...words], {
      cwd: folder,
      env: { ...process.env, USAGE_REPORT: report },
      encoding: 'utf8',
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    const wall = Number(process.hrtime.bigint() - start) / 1e9;
    // 1 says that some notes have errors: those of the invented year do, as a department's have.
    if (status !== 0 && status !== 1) throw new Error(`${words.join(' ')} ended with ${status}: ${stderr}`);
    return { wall, ...JSON.parse(readFileSync(report, 'utf8')) };
  }
}

export const best = (values) => Math.min(...values);
export const ratio = (value) => value.toFixed(2);
