// Checking many notes: throughput against parsing alone, threads, the cache, and memory.
//   node tests/speed/many-notes.mjs [rounds] [--memory]
// Ratios within one run, so that they hold on any machine; nothing is asserted. Processor time where one process is
// compared with another, wall time for threads, each the best of the rounds. --memory also checks 20,000 notes.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
const work = mkdtempSync(join(tmpdir(), 'sideport-speed-'));
const rounds = Number(process.argv[2] ?? 3);
const NOTES = 2000;

async function bundle(from, to, format) {
  await build({
    absWorkingDir: root,
    entryPoints: [from],
    outfile: join(work, to),
    bundle: true,
    minify: true,
    platform: 'node',
    target: 'node20.19',
    format,
    alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
    logLevel: 'warning',
  });
}

/** Writes exactly so many notes of the invented year, with the department file. */
async function writeNotes(folder, count) {
  const { makeYear } = await import(pathToFileURL(join(work, 'make-year.mjs')).href);
  let written = 0;
  for (const { file, text } of makeYear({ operations: count })) {
    if (written > count) break;
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
    written += 1;
  }
}

/** Runs a program to its end: wall time, processor time and the most memory it held, as it measured itself. */
function measured(program, words, folder) {
  const report = join(work, 'usage.json');
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, ['-r', join(work, 'usage.cjs'), program, ...words], {
    cwd: folder,
    env: { ...process.env, USAGE_REPORT: report },
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const wall = Number(process.hrtime.bigint() - start) / 1e9;
  if (status !== 0) throw new Error(`${words.join(' ')} ended with ${status}: ${stderr}`);
  return { wall, ...JSON.parse(readFileSync(report, 'utf8')) };
}

const best = (values) => Math.min(...values);
const ratio = (value) => value.toFixed(2);

try {
  await bundle('server/src/command-line/main.ts', 'sideport.cjs', 'cjs');
  await bundle('server/src/command-line/checking/check-worker.ts', 'check-worker.cjs', 'cjs');
  await bundle('tools/year/make-year.ts', 'make-year.mjs', 'esm');
  writeFileSync(
    join(work, 'usage.cjs'),
    `process.on('exit', () => { const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
require('node:fs').writeFileSync(process.env.USAGE_REPORT, JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1e6, mb: maxRSS / 1024 })); });`,
  );
  // The Node build of yaml, as any program gets it that asks for the package.
  const yaml = createRequire(join(root, 'package.json')).resolve('yaml');
  writeFileSync(
    join(work, 'parse.cjs'),
    `const { parseDocument } = require(${JSON.stringify(yaml)}); const fs = require('node:fs'); const path = require('node:path');
const walk = (folder) => fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) => entry.isDirectory() ? walk(path.join(folder, entry.name)) : entry.name.endsWith('.yaml') ? [path.join(folder, entry.name)] : []);
let errors = 0; for (const file of walk(process.cwd())) errors += parseDocument(fs.readFileSync(file, 'utf8')).errors.length; if (errors > 0) process.exit(1);`,
  );
  const notes = join(work, 'notes');
  await writeNotes(notes, NOTES);
  const program = join(work, 'sideport.cjs');
  const check = (...words) =>
    measured(program, ['check', '.', '--fail-on', 'never', '--output', '/dev/null', ...words], notes);
  const runs = { parse: [], one: [], two: [], first: [], again: [] };
  for (let round = 0; round < rounds; round += 1) {
    runs.parse.push(measured(join(work, 'parse.cjs'), [], notes));
    runs.one.push(check('--no-cache', '--jobs', '1'));
    runs.two.push(check('--no-cache', '--jobs', '2'));
    rmSync(join(notes, '.sideport-cache'), { recursive: true, force: true });
    runs.first.push(check('--jobs', '1'));
    runs.again.push(check('--jobs', '1'));
  }
  const cpu = (name) => best(runs[name].map((run) => run.cpu));
  const wall = (name) => best(runs[name].map((run) => run.wall));
  console.log(`${NOTES} notes, best of ${rounds} rounds`);
  console.log(`parsing alone ${ratio(cpu('parse'))} s of processor time, checking ${ratio(cpu('one'))} s`);
  console.log(`throughput of checking over parsing alone: ${ratio(cpu('parse') / cpu('one'))} (goal 0.8)`);
  console.log(
    `two threads over one, wall time: ${ratio(wall('one') / wall('two'))} (goal 1.7; needs two free processors)`,
  );
  console.log(`with the cache over without, processor time: ${ratio(cpu('first') / cpu('again'))} (goal 10)`);
  console.log(`with the cache over without, wall time: ${ratio(wall('first') / wall('again'))}`);
  if (process.argv.includes('--memory')) {
    const many = join(work, 'many');
    await writeNotes(many, 10 * NOTES);
    const small = best(runs.one.map((run) => run.mb));
    const large = measured(
      program,
      ['check', '.', '--fail-on', 'never', '--output', '/dev/null', '--no-cache', '--jobs', '1'],
      many,
    ).mb;
    console.log(
      `most memory: ${small.toFixed(0)} MB for ${NOTES}, ${large.toFixed(0)} MB for ${10 * NOTES}: ${ratio(large / small)} times (goal 1.3)`,
    );
    console.log(`(${readdirSync(many).length} folders)`);
  }
} finally {
  rmSync(work, { recursive: true, force: true });
}
