// Bundles the command line, the language server and the extension.   node tools/build.mjs [--package]
// --package also writes the extension's .vsix.
import { spawnSync } from 'node:child_process';
import { copyFileSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));

const node = { platform: 'node', target: 'node20.19', format: 'cjs' };
const browser = { platform: 'browser', target: 'es2022' };
/** The commands of seldom.ts are looked for in its bundle; from bin and from dist alike it lies at this place. */
const seldomApart = {
  name: 'seldom-apart',
  setup: ({ onResolve }) =>
    onResolve(
      { filter: /^(?:\.\/commands\/(?:audit|dictate|explain|export|show)|\.\.\/note\/dictation\/dictation)\.ts$/ },
      () => ({
        path: '../dist/seldom.cjs',
        external: true,
      }),
    ),
};
// Required when it is wanted, and not imported: the program is a script that is given `require`.
const withSeldomApart = { plugins: [seldomApart], supported: { 'dynamic-import': false } };
const bundles = [
  { from: 'server/src/command-line/main.ts', to: 'server/dist/sideport.cjs', ...node, ...withSeldomApart },
  { from: 'server/src/command-line/seldom.ts', to: 'server/dist/seldom.cjs', ...node },
  { from: 'server/src/command-line/checking/check-worker.ts', to: 'server/dist/check-worker.cjs', ...node },
  { from: 'server/src/language-server/node.ts', to: 'server/dist/language-server.cjs', ...node },
  {
    from: 'server/src/language-server/browser.ts',
    to: 'server/dist/language-server.worker.js',
    ...browser,
    format: 'iife',
  },
  // One file for a process, which requires it, and for a worker, which loads it as a script.
  {
    from: 'server/src/language-server/apart-part.ts',
    to: 'server/dist/apart.js',
    ...browser,
    format: 'iife',
    globalName: 'sideportApart',
    footer: { js: 'if(typeof module==="object")module.exports=sideportApart;' },
  },
  { from: 'client/src/extension.ts', to: 'client/dist/extension.cjs', ...node },
  { from: 'client/src/extension.browser.ts', to: 'client/dist/extension.browser.js', ...browser, format: 'cjs' },
  { from: 'client/src/picture/page.ts', to: 'client/dist/picture-page.js', ...browser, format: 'iife' },
];
// The extension carries its own copies of the servers, so that it needs nothing beside itself.
const carried = ['language-server.cjs', 'language-server.worker.js', 'apart.js', 'check-pages.json'];

async function bundle({ from, to, ...options }) {
  const result = await build({
    absWorkingDir: root,
    entryPoints: [from],
    outfile: to,
    bundle: true,
    minify: true,
    metafile: true,
    legalComments: 'none',
    logLevel: 'warning',
    // The PDF writer reads files of its own folder and is large; only `show --as pdf` asks for it.
    external: ['vscode', 'pdfkit', 'svg-to-pdfkit'],
    // The browser build of yaml reads no process.env while it parses, and is the one build that every bundle can take.
    alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
    ...options,
  });
  return Object.keys(result.metafile.inputs);
}

/** The licence texts of every library that went into a bundle: their licences ask for them to be handed on. */
function licencesOf(inputs) {
  const packages = new Set(inputs.flatMap((input) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0] ?? []));
  return [...packages]
    .toSorted((a, b) => a.localeCompare(b))
    .map((folder) => {
      const { name, version, license } = JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8'));
      const file = readdirSync(join(root, folder)).find((entry) => /^licen[cs]e/i.test(entry));
      if (file === undefined) throw new Error(`${name} carries no licence text`);
      return `${name} ${version} (${license})\n\n${readFileSync(join(root, folder, file), 'utf8').trim()}\n`;
    });
}

function packageExtension() {
  const args = ['package', '--no-dependencies', '--allow-missing-repository', '--out', 'sideport.vsix'];
  const run = spawnSync(join(root, 'node_modules/.bin/vsce'), args, { cwd: join(root, 'client'), encoding: 'utf8' });
  if (run.status !== 0) throw new Error(`The extension could not be packaged:\n${run.stdout}${run.stderr}`);
}

// What an earlier build left behind must not be packaged.
rmSync(join(root, 'client/dist'), { recursive: true, force: true });
const inputs = await Promise.all(bundles.map(bundle));
// What Node requires from here is no module of the workspace's kind.
writeFileSync(join(root, 'server/dist/package.json'), '{ "type": "commonjs" }\n');
// The pages of the checks stand beside the servers, which read them when one is asked for.
const pages = readdirSync(join(root, 'docs/checks')).filter((name) => name !== 'README.md');
const pageTexts = pages.map((name) => [
  name.replace(/\.md$/, ''),
  readFileSync(join(root, 'docs/checks', name), 'utf8'),
]);
writeFileSync(join(root, 'server/dist/check-pages.json'), JSON.stringify(Object.fromEntries(pageTexts)));
for (const name of carried) copyFileSync(join(root, 'server/dist', name), join(root, 'client/dist', name));
const licences = licencesOf([...new Set(inputs.flat())]).join(`\n${'-'.repeat(80)}\n\n`);
for (const folder of ['server/dist', 'client/dist']) writeFileSync(join(root, folder, 'LIBRARIES.txt'), licences);
if (process.argv.includes('--package')) packageExtension();
await import('./keep-compiled.mjs');
