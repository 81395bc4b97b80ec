// What all computed values of one operation cost together, as a share of parsing its text as YAML.
//   node tests/speed/computed-values.mjs [rounds]
// The goal is a quarter at most. A ratio within one run, so that it holds on any machine; nothing is asserted.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseDocument } from 'yaml';
import { coreModule } from './core.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { computeNote, readNote, contextOf } = await coreModule(
  'computed-values',
  `export { computeNote } from './server/src/note/computing/compute-note.ts';
export { readNote } from './server/src/note/reading/read-note.ts';
export { contextOf } from './server/src/note/review.ts';`,
);

const rounds = Number(process.argv[2] ?? 400);
const read = (name) => readFileSync(join(root, 'samples/sound', name), 'utf8');
const text = read('long-eye-ring.opnote.yaml');
const department = readNote(read('sideport.yaml'), 'department').note;
const context = contextOf(readNote(text), { department, today: '2031-06-01' });

function timed(run) {
  const start = process.hrtime.bigint();
  run();
  return Number(process.hrtime.bigint() - start) / 1e6;
}
const median = (times) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)];

const parsing = [];
const computing = [];
// In turns, so that whatever else the machine does falls on both.
for (let round = 0; round < rounds; round++) {
  parsing.push(timed(() => parseDocument(text)));
  computing.push(timed(() => computeNote(context)));
}
const half = Math.floor(rounds / 2);
const [parse, compute] = [median(parsing.slice(half)), median(computing.slice(half))];
const { values, notComputed } = computeNote(context);
console.log(
  `parsing ${text.split('\n').length} lines with yaml: ${parse.toFixed(3)} ms (median of ${rounds - half} after as many to warm up)`,
);
console.log(`computing ${values.length} values (${notComputed.length} not computed): ${compute.toFixed(3)} ms`);
console.log(`ratio ${(compute / parse).toFixed(3)} (goal: at most 0.25)`);
