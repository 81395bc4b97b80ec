// Writes the invented year of a department.   node tools/make-year.mjs [--output FOLDER] [--operations N] [--seed N]
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const { values } = parseArgs({
  options: { output: { type: 'string' }, operations: { type: 'string' }, seed: { type: 'string' } },
});
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
  const target = values.output ?? join(root, 'samples/year');
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
