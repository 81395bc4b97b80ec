// Parts of the core as they are shipped, bundled and minified, for the scripts that time them in their own process.
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What the given exports name, as one loaded module; paths are from the top folder. */
export async function coreModule(name, contents) {
  const outfile = join(root, `node_modules/.cache/sideport/speed-${name}.mjs`);
  await build({
    stdin: { contents, resolveDir: root, loader: 'ts' },
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    minify: true,
    alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
    logLevel: 'warning',
  });
  const module = await import(pathToFileURL(outfile).href);
  rmSync(outfile);
  return module;
}
