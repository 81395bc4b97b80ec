// Checking many notes: throughput against parsing alone, threads, the cache, and memory.
//   node tests/speed/many-notes.mjs [rounds] [--memory]
// Ratios within one run, so that they hold on any machine; nothing is asserted. Processor time where one process is
// compared with another, wall time for threads, each the best of the rounds. --memory also checks 20,000 notes.
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Bench, best, ratio, root } from './measured.mjs';

const work = mkdtempSync(join(tmpdir(), 'sideport-speed-'));
const bench = new Bench(work);
const rounds = Number(process.argv[2] ?? 3);
const NOTES = 2000;

try {
  await bench.bundle('tools/year/make-year.ts', 'make-year.mjs', 'esm');
  // The Node build of yaml, as any program gets it that asks for the package.
  const yaml = createRequire(join(root, 'package.json')).resolve('yaml');
  writeFileSync(
    join(work, 'parse.cjs'),
    `const { parseDocument } = require(${JSON.stringify(yaml)}); const fs = require('node:fs'); const path = require('node:path');
const walk = (folder) => fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) => entry.isDirectory() ? walk(path.join(folder, entry.name)) : entry.name.endsWith('.yaml') ? [path.join(folder, entry.name)] : []);
let errors = 0; for (const file of walk(process.cwd())) errors += parseDocument(fs.readFileSync(file, 'utf8')).errors.length; if (errors > 0) process.exit(1);`,
  );
  const notes = join(work, 'notes');
  await bench.writeNotes(notes, NOTES);
  // As it is shipped.
  const program = join(root, 'server/bin/sideport.cjs');
  const check = (...words) =>
    bench.measured(program, ['check', '.', '--fail-on', 'never', '--output', '/dev/null', ...words], notes);
  const runs = { parse: [], one: [], two: [], first: [], again: [] };
  for (let round = 0; round < rounds; round += 1) {
    runs.parse.push(bench.measured(join(work, 'parse.cjs'), [], notes));
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
    await bench.writeNotes(many, 10 * NOTES);
    const small = best(runs.one.map((run) => run.mb));
    const large = bench.measured(
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
