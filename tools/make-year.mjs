// Writes the invented year of a department.   node tools/make-year.mjs [--output FOLDER] [--operations N] [--seed N]
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const { values } = parseArgs({
  options: { output: { type: 'string' }, operations: { type: 'string' }, seed: { type: 'string' } },
});

const ours = join(root, 'samples/year');
const target = values.output ?? ours;
// Notes of another run would be read as notes of this year; only our own folder is emptied.
if (target === ours) rmSync(ours, { recursive: true, force: true });
else if (existsSync(target) && readdirSync(target).length > 0) {
  console.error(`${target} is not empty: say a new folder.`);
  process.exit(2);
}
const number = (text) => (text === undefined ? {} : Number(text));

const folder = mkdtempSync(join(tmpdir(), 'sideport-year-'));
try {
  const outfile = join(folder, 'make-year.mjs');
  await build({
    entryPoints: [join(root, 'tools/year/make-year.ts')],
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile,
    logLevel: 'warning',
  });
  const { makeYear } = await import(pathToFileURL(outfile).href);
  const options = {
    ...(values.operations === undefined ? {} : { operations: number(values.operations) }),
    ...(values.seed === undefined ? {} : { seed: number(values.seed) }),
  };
  let written = 0;
  for (const { file, text } of makeYear(options)) {
    const path = join(target, file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    written += 1;
  }
  console.log(`${written} files in ${target}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
