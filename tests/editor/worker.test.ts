import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { InitializeParams, MessageConnection, PublishDiagnosticsParams } from 'vscode-languageserver/node';
import { connectToProcess, connectToWorker, type Connection } from './support/connections.ts';
import { launchBrowser } from './support/note-window.ts';
import { sample } from './support/samples.ts';

const uri = 'memory:/set/one.opnote.yaml';
const sound = sample('sound/long-eye-ring.opnote.yaml');
const faulty = sound.replace('eye: left\nwhich-eye', 'eye: right\nwhich-eye');
const whole = { start: { line: 0, character: 0 }, end: { line: sound.split('\n').length, character: 0 } };
const lineOf = (words: string): number => sound.slice(0, sound.indexOf(words)).split('\n').length - 1;

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('the server in a worker of Chromium answers as the server in a process does', async () => {
  const page = await browser.newPage();
  const inProcess = await converse(connectToProcess());
  const inWorker = await converse(await connectToWorker(page));
  expect(inWorker).toEqual(inProcess);
  expect(inWorker['remarks of the faulty note']).not.toEqual([]);
  expect(inWorker['remarks of the sound note']).toEqual([]);
  await page.close();
});

/** One session of an editor, with every answer that it got. */
async function converse({ connection, stop }: Connection): Promise<Record<string, unknown>> {
  const answers: Record<string, unknown> = {};
  const textDocument = { uri };
  const at = (words: string, character: number): object => ({
    textDocument,
    position: { line: lineOf(words), character },
  });
  connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => null));
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('sideport/listFolder', () => [{ name: 'one.opnote.yaml', kind: 'file' }]);
  connection.onRequest('sideport/readFile', ({ uri: asked }: { uri: string }) =>
    asked === uri ? { text: sound } : null,
  );
  connection.onRequest('sideport/readCheckPages', () => readFileSync('server/dist/check-pages.json', 'utf8'));

  const initialize: Partial<InitializeParams> = {
    processId: null,
    rootUri: null,
    capabilities: { textDocument: { completion: { completionItem: { snippetSupport: true } } } },
    initializationOptions: { files: true },
  };
  answers['capabilities'] = await connection.sendRequest('initialize', initialize);
  await connection.sendNotification('initialized', {});
  const opened = remarks(connection);
  const document = { uri, languageId: 'opnote', version: 1, text: faulty };
  await connection.sendNotification('textDocument/didOpen', { textDocument: document });
  answers['remarks of the faulty note'] = await opened;

  const changed = remarks(connection);
  const change = { textDocument: { uri, version: 2 }, contentChanges: [{ text: sound }] };
  await connection.sendNotification('textDocument/didChange', change);
  answers['remarks of the sound note'] = await changed;

  const requests: readonly (readonly [string, object])[] = [
    ['textDocument/completion', at('eye: left', 'eye: '.length)],
    ['textDocument/hover', at('    axial-length: 29.60', '    axial'.length)],
    ['textDocument/inlayHint', { textDocument, range: whole }],
    ['textDocument/codeLens', { textDocument }],
    ['textDocument/codeAction', { textDocument, range: whole, context: { diagnostics: [] } }],
    ['textDocument/documentSymbol', { textDocument }],
    ['textDocument/foldingRange', { textDocument }],
    ['textDocument/formatting', { textDocument, options: { tabSize: 2, insertSpaces: true } }],
    ['sideport/computedValues', textDocument],
    ['sideport/explainCheck', { check: 'implanted-power-differs-from-plan' }],
  ];
  for (const [method, params] of requests) {
    // oxlint-disable-next-line no-await-in-loop -- one question after the other, as a person asks
    answers[method] = await connection.sendRequest(method, params);
    expect(answers[method], method).not.toBeNull();
  }
  await connection.sendRequest('shutdown');
  await stop();
  return answers;
}

/** The remarks that the server sends next. */
function remarks(connection: MessageConnection): Promise<PublishDiagnosticsParams['diagnostics']> {
  return new Promise((resolve) => {
    const heard = connection.onNotification('textDocument/publishDiagnostics', (sent: PublishDiagnosticsParams) => {
      heard.dispose();
      resolve(sent.diagnostics);
    });
  });
}
