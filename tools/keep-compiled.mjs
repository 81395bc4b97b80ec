// Keeps what the compiler made of the command line in a trial run, so that the command starts without compiling.
// Run by the build:   node tools/keep-compiled.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const { bundle, kept, compile, run } = createRequire(import.meta.url)('../server/bin/compiled.cjs');

// The bundler escapes what is not ASCII everywhere but in regular expressions, where an escape means the same.
const ascii = readFileSync(bundle, 'utf8').replace(
  /[^\0-\x7f]/g,
  (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
);
writeFileSync(bundle, ascii);

const script = compile(undefined, 'latin1');
// What a sound note needs. Kept code that a run does not use costs it time all the same, so the rest is compiled when it is
// first wanted.
const sample = fileURLToPath(new URL('../samples/sound/routine-right.opnote.yaml', import.meta.url));
process.argv.splice(2, Infinity, 'check', '--fail-on', 'never', '--jobs', '1', '--no-cache', sample);
process.stdout.write = () => true;
run(script);
process.on('exit', () => {
  writeFileSync(kept, script.createCachedData());
});
