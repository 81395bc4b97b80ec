import { createServer, type Server } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const editor = here('../host/node_modules/code-server/lib/vscode/');
const WORKBENCH = 'out/vs/code/browser/workbench/workbench';

/** What stands under which address: the editor's own files, and the extensions. */
const folders: Readonly<Record<string, string>> = {
  editor,
  sideport: here('../../../client'),
  'notes-in-memory': here('../web/notes-in-memory'),
};

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
};

export interface WebEditor {
  readonly address: string;
  stop(): void;
}

/** Serves VS Code as plain files: the whole editor runs in the page, and there is no Node behind it. */
export async function startWebEditor(files: Readonly<Record<string, string>>): Promise<WebEditor> {
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    answer(path, files, authorityOf(server)).then(
      ({ type, body }) => response.writeHead(200, { 'Content-Type': type }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return { address: `http://${authorityOf(server)}/`, stop: () => server.close() };
}

function authorityOf(server: Server): string {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('The web editor has no port');
  return `127.0.0.1:${address.port}`;
}

async function answer(
  path: string,
  files: Readonly<Record<string, string>>,
  authority: string,
): Promise<{ readonly type: string; readonly body: string | Buffer }> {
  if (path === '/') return { type: 'text/html', body: page(authority) };
  if (path === '/notes-in-memory/files.json') return { type: 'application/json', body: JSON.stringify(files) };
  const [, first = '', ...rest] = normalize(path).split('/');
  const folder = folders[first];
  if (folder === undefined) throw new Error(`${path} is not served`);
  const body = await readFile(join(folder, ...rest));
  const type = types[extname(path)] ?? 'application/octet-stream';
  return { type, body: path.endsWith(`${WORKBENCH}.js`) ? withoutServer(body.toString()) : body };
}

/** This build expects a server behind the page, for files and for settings; here there is none. */
function withoutServer(workbench: string): string {
  return workbench
    .replace(',remoteAuthority:location.host}', '}')
    .replace(/(?<=\.file\(this\.userDataPath\)\.with\(\{scheme:)\w+\.vscodeRemote/, '"vscode-userdata"');
}

function page(authority: string): string {
  const extensions = ['sideport', 'notes-in-memory'];
  const configuration = {
    folderUri: { scheme: 'vscode-vfs', authority: 'notes', path: '/set' },
    additionalBuiltinExtensions: extensions.map((name) => ({ scheme: 'http', authority, path: `/${name}` })),
    enableWorkspaceTrust: true,
    userDataPath: '/user',
    isEnabledFileDownloads: false,
    isEnabledFileUploads: false,
    isEnabledCoderGettingStarted: false,
    configurationDefaults: {
      'workbench.startupEditor': 'none',
      'telemetry.telemetryLevel': 'off',
      'chat.disableAIFeatures': true,
      // The folder is not trusted, and nobody is asked.
      'security.workspace.trust.enabled': true,
      'security.workspace.trust.startupPrompt': 'never',
      'security.workspace.trust.banner': 'always',
    },
  };
  const settings = JSON.stringify(configuration).replaceAll('"', '&quot;');
  return `<!DOCTYPE html><html><head><meta charset="utf-8">
<meta id="vscode-workbench-web-configuration" data-settings="${settings}">
<link rel="stylesheet" href="/editor/${WORKBENCH}.css">
</head><body aria-label="">
<script>globalThis._VSCODE_FILE_ROOT = location.origin + '/editor/out/';</script>
<script type="module" src="/editor/out/nls.messages.js"></script>
<script type="module" src="/editor/${WORKBENCH}.js"></script>
</body></html>`;
}
