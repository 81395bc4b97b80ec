// Everything that can be tested without an editor.   npm test
// Builds first, because some tests look at what is shipped. Goes on after a failure, so that one run shows them all.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installLibraries, root, runNode } from './installed.mjs';

installLibraries();

const scratch = mkdtempSync(join(tmpdir(), 'test-results-'));
const results = join(scratch, 'results.json');
const library = (path) => join(root, 'node_modules', path);

const steps = [
  ['Build and package', 'tools/build.mjs', '--package'],
  ['Type check', library('typescript/bin/tsc'), '-p', '.'],
  ['Lint', library('oxlint/bin/oxlint'), '--type-aware', '--deny-warnings'],
  ['Layout', library('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'],
  ['Dead code', library('knip/bin/knip.js')],
  [
    'Tests',
    library('vitest/vitest.mjs'),
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${results}`,
  ],
];

let passed = 0;
let failed = 0;
for (const [name, ...words] of steps) {
  console.log(`\n== ${name}`);
  if (runNode(...words) === 0) passed++;
  else {
    failed++;
    console.log(`${name}: failed`);
  }
}
const counted = existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : {};
rmSync(scratch, { recursive: true });
passed += counted.numPassedTests ?? 0;
failed += counted.numFailedTests ?? 0;
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
