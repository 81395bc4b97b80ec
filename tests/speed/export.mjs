// Exporting many notes: memory against their number, and the rate against checking them.
//   node tests/speed/export.mjs [rounds] [--large]
// Ratios within one run; nothing is asserted. Processor time, best of the rounds. --large also exports 10,000 notes.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Bench, best, ratio } from './measured.mjs';

const work = mkdtempSync(join(tmpdir(), 'sideport-export-'));
const bench = new Bench(work);
const rounds = Number(process.argv[2] ?? 3);
const FORMS = ['ndjson', 'csv', 'parquet', 'fhir'];
const SIZES = process.argv.includes('--large') ? [1000, 10_000] : [500, 2000];

try {
  await bench.bundle('server/src/command-line/main.ts', 'sideport.cjs', 'cjs');
  await bench.bundle('tools/year/make-year.ts', 'make-year.mjs', 'esm');
  const program = join(work, 'sideport.cjs');
  const notesOf = (size) => join(work, `notes-${size}`);
  for (const size of SIZES) await bench.writeNotes(notesOf(size), size);
  const measure = (size, words) => Array.from({ length: rounds }, () => bench.measured(program, words, notesOf(size)));
  const checks = (size) =>
    measure(size, ['check', '.', '--fail-on', 'never', '--output', '/dev/null', '--no-cache', '--jobs', '1']);
  const [small = 0, large = 0] = SIZES;
  const checked = { small: checks(small), large: checks(large) };
  const cpu = (runs) => best(runs.map((run) => run.cpu));
  const mb = (runs) => best(runs.map((run) => run.mb));
  console.log(`${small} and ${large} notes, best of ${rounds} rounds`);
  console.log(
    `check: ${ratio((cpu(checked.large) / large) * 1000)} ms of processor time a note, ${mb(checked.small).toFixed(0)} and ${mb(checked.large).toFixed(0)} MB`,
  );
  for (const form of FORMS) {
    const output = join(work, form === 'ndjson' ? 'out.ndjson' : form === 'fhir' ? 'fhir.ndjson' : form);
    const words = ['export', '.', '--as', form, '--output', output];
    const [few, many] = [measure(small, words), measure(large, words)];
    console.log(
      `${form}: ${ratio((cpu(many) / large) * 1000)} ms a note, ${ratio(cpu(many) / cpu(checked.large))} times checking (goal 1.5); ` +
        `most memory ${mb(few).toFixed(0)} and ${mb(many).toFixed(0)} MB, ${ratio(mb(many) / mb(few))} times`,
    );
  }
} finally {
  rmSync(work, { recursive: true, force: true });
}
