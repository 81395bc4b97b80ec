// Writes every generated file: schemas and pages made from the source.   npm run generate
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { root } from './installed.mjs';

const program = join(root, 'node_modules/.cache/sideport/generated-files.mjs');
await build({
  absWorkingDir: root,
  entryPoints: ['tools/generated/generated-files.ts'],
  outfile: program,
  bundle: true,
  platform: 'node',
  format: 'esm',
  alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
  logLevel: 'warning',
});
const { generatedFiles } = await import(pathToFileURL(program).href);
rmSync(program);

for (const [path, text] of Object.entries(generatedFiles())) {
  const file = join(root, path);
  mkdirSync(dirname(file), { recursive: true });
  let before = '';
  try {
    before = readFileSync(file, 'utf8');
  } catch {
    // New.
  }
  if (before === text) continue;
  writeFileSync(file, text);
  console.log(`wrote ${path}`);
}
