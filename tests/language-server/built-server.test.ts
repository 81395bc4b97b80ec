import { spawn, type ChildProcess } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  createProtocolConnection,
  IPCMessageReader,
  IPCMessageWriter,
  StreamMessageReader,
  StreamMessageWriter,
  type CompletionItem,
} from 'vscode-languageserver/node';
import { TestEditor } from './editor.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const samples = join(root, 'samples/sound');
const folder = mkdtempSync(join(tmpdir(), 'sideport-server-'));
const bundle = join(folder, 'server.cjs');
const set = join(folder, 'set');
const children: ChildProcess[] = [];

beforeAll(async () => {
  await build({
    entryPoints: [join(root, 'server/src/language-server/node.ts')],
    outfile: bundle,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20.19',
    alias: { yaml: join(root, 'node_modules/yaml/browser/index.js') },
  });
});
afterAll(() => {
  for (const child of children) child.kill();
  rmSync(folder, { recursive: true, force: true });
});

function start(...args: string[]): ChildProcess {
  const ipc = args.includes('--node-ipc');
  const child = spawn(process.execPath, [bundle, ...args], {
    stdio: ['pipe', 'pipe', 'pipe', ...(ipc ? (['ipc'] as const) : [])],
  });
  children.push(child);
  return child;
}

async function editorOver(child: ChildProcess): Promise<TestEditor> {
  if (child.stdout === null || child.stdin === null) throw new Error('The server has no streams');
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  return TestEditor.over(connection);
}

describe('the built server', () => {
  it('speaks over stdio, writes nothing else to it, and ends when it is told to', async () => {
    const child = start();
    let errors = '';
    child.stderr?.on('data', (data: Buffer) => (errors += data.toString()));
    const editor = await editorOver(child);
    const text = readFileSync(join(samples, 'long-eye-ring.opnote.yaml'), 'utf8');
    const remarks = await editor.open('file:///nowhere/a.opnote.yaml', text);
    // The samples are of a year to come.
    expect(remarks.filter(({ code }) => code !== 'date-in-future')).toEqual([]);
    const ended = new Promise((done) => child.once('exit', done));
    await editor.connection.sendRequest('shutdown');
    await editor.connection.sendNotification('exit');
    expect(await ended).toBe(0);
    expect(errors).toBe('');
  });

  it('speaks over the channel of a Node parent', async () => {
    const child = start('--node-ipc');
    const editor = await TestEditor.over(
      createProtocolConnection(new IPCMessageReader(child), new IPCMessageWriter(child)),
    );
    expect(editor.initialized.serverInfo?.name).toBe('Sideport');
    await editor.stop();
    child.kill();
  });

  it('reads the set of a note from the disk, and hears of files that change there', async () => {
    mkdirSync(join(set, '2031'), { recursive: true });
    copyFileSync(join(samples, 'sideport.yaml'), join(set, 'sideport.yaml'));
    const operation = readFileSync(join(samples, 'long-eye-ring.opnote.yaml'), 'utf8');
    const visit = readFileSync(join(samples, 'long-eye-ring-month-1.opnote.yaml'), 'utf8');
    const operationFile = join(set, '2031/long eye.opnote.yaml');
    writeFileSync(operationFile, operation.replace(/^eye: left$/m, 'eye: right'));
    const editor = await editorOver(start('--stdio'));
    const uri = pathToFileURL(join(set, 'visit.opnote.yaml')).href;
    await editor.open(uri, visit);
    await editor.until(uri, (checks) => checks.includes('visit-of-other-eye'));
    writeFileSync(operationFile, operation);
    await editor.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: pathToFileURL(operationFile).href, type: 2 }],
    });
    await editor.until(uri, (checks) => !checks.includes('visit-of-other-eye'));
    expect(editor.checks(uri)).not.toContain('visit-of-other-eye');
    await editor.stop();
  });
});

describe('a half-typed note', () => {
  // Every letter of every sample is tried on the core itself; here the way through the protocol is.
  it.each([
    'long-eye-ring.opnote.yaml',
    'manual-small-incision-right.opnote.yaml',
    'long-eye-ring-month-1.opnote.yaml',
  ])(
    '%s is answered without an error and without losing what was typed',
    async (file) => {
      const editor = await editorOver(start());
      const uri = `file:///nowhere/${file}`;
      const text = readFileSync(join(samples, file), 'utf8');
      await editor.open(uri, '');
      const lost: string[] = [];
      for (let length = 1; length <= text.length; length += 3) {
        await editor.type(uri, text.slice(0, length));
        const at = { textDocument: { uri }, position: editor.position(uri, length) };
        const [items] = await Promise.all([
          editor.request<CompletionItem[]>('textDocument/completion', at),
          editor.request('textDocument/hover', at),
        ]);
        for (const { label, textEdit } of items) {
          const edit = textEdit !== undefined && 'insert' in textEdit ? textEdit.insert : undefined;
          const isOnLine = edit?.start.line === at.position.line && edit.end.character === at.position.character;
          if (!isOnLine) lost.push(`${label} at ${length}`);
        }
      }
      expect(lost).toEqual([]);
      expect(editor.logged).toEqual([]);
      await editor.stop();
    },
    120_000,
  );
});
