// Writes the pages of the checks, with what their examples yield, to docs/checks.   node tools/write-check-pages.mjs
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'docs/checks');

const entry = `
  export { explainAll, explainCheck } from './server/src/note/checks/explain.ts';
  export { knownChecks } from './server/src/note/checks/known-checks.ts';
`;
const { outputFiles } = await build({
  stdin: { contents: entry, resolveDir: root, loader: 'ts' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  write: false,
  // The browser build of yaml needs no require.
  alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
});
const code = Buffer.from(outputFiles[0].contents).toString('base64');
const { explainAll, explainCheck, knownChecks } = await import(`data:text/javascript;base64,${code}`);

mkdirSync(folder, { recursive: true });
for (const name of readdirSync(folder)) rmSync(join(folder, name));
for (const { id } of knownChecks) writeFileSync(join(folder, `${id}.md`), explainCheck(id).markdown);
writeFileSync(join(folder, 'README.md'), explainAll().markdown);
console.log(`docs/checks: ${knownChecks.length} pages.`);
