// Keeps what the compiler made of the command line in a trial run, so that the command starts without compiling.
// Run by the build:   node tools/keep-compiled.mjs
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const { kept, compile, run } = createRequire(import.meta.url)('../server/bin/compiled.cjs');

const script = compile();
// Both ways through the reader, the checks and the computations are compiled when they are used.
process.argv.splice(2, Infinity, 'check', '--fail-on', 'never', fileURLToPath(new URL('../samples', import.meta.url)));
process.stdout.write = () => true;
run(script);
process.on('exit', () => {
  writeFileSync(kept, script.createCachedData());
});
