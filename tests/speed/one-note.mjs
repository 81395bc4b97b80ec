// What one usual note costs, as ratios in one run.   node tests/speed/one-note.mjs [rounds]
//  - the whole check (read, shape, checks, computed values) against parseDocument of yaml's Node build: at most 1.25
//  - reading alone, the checks alone (at most 0.3) and the computed values alone (at most 0.25) against the same
//  - `sideport check` on one note against a bare `node -e 0`: at most 2.0
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseDocument } from 'yaml';
import { coreModule } from './core.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { readNote, reviewNote, remarksOf, contextOf, computeNote } = await coreModule(
  'one-note',
  `export { readNote } from './server/src/note/reading/read-note.ts';
export { reviewNote, remarksOf, contextOf } from './server/src/note/review.ts';
export { computeNote } from './server/src/note/computing/compute-note.ts';`,
);

const rounds = Number(process.argv[2] ?? 400);
const file = join(root, 'samples/sound/long-eye-ring.opnote.yaml');
const text = readFileSync(file, 'utf8');
const department = readNote(readFileSync(join(root, 'samples/sound/sideport.yaml'), 'utf8'), 'department').note;
const around = { department, today: '2031-12-31' };

// Each run gets a note that was read afresh: nothing is left over from the run before.
const runs = {
  parse: () => parseDocument(text),
  whole: () => reviewNote(text, around).computed,
  read: () => readNote(text),
  check: (reading) => remarksOf(reading, around),
  compute: (reading) => computeNote(contextOf(reading, around)),
};
const times = Object.fromEntries(Object.keys(runs).map((name) => [name, []]));
// In turns, so that whatever else the machine does falls on all.
for (let round = 0; round < rounds; round++) {
  for (const [name, run] of Object.entries(runs)) {
    const reading = readNote(text);
    const start = process.hrtime.bigint();
    run(reading);
    times[name].push(Number(process.hrtime.bigint() - start) / 1e6);
  }
}
const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
const cost = Object.fromEntries(Object.entries(times).map(([name, all]) => [name, median(all.slice(rounds / 2))]));
const show = (name, value, goal) =>
  console.log(`${name.padEnd(52)} ${value.toFixed(2)}${goal === undefined ? '' : `   (at most ${goal})`}`);

console.log(
  `A note of ${text.split('\n').length} lines; parseDocument ${cost.parse.toFixed(2)} ms; all else as a share of it.`,
);
show('whole check: read, checks, computed values', cost.whole / cost.parse, 1.25);
show('reading', cost.read / cost.parse);
show('checks and allowances', cost.check / cost.parse, 0.3);
show('computed values', cost.compute / cost.parse, 0.25);

const program = join(root, 'server/bin/sideport.cjs');
if (existsSync(join(root, 'server/dist/sideport.cjs'))) {
  const wall = (words) => {
    const start = process.hrtime.bigint();
    spawnSync(process.execPath, words, { stdio: 'ignore', cwd: root });
    return Number(process.hrtime.bigint() - start) / 1e6;
  };
  const bare = [];
  const checked = [];
  for (let round = 0; round < 30; round++) {
    bare.push(wall(['-e', '0']));
    checked.push(wall([program, 'check', file]));
  }
  show('sideport check on one note, against node -e 0', median(checked) / median(bare), 2.0);
}
