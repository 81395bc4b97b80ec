// A language server as a process of its own, driven over stdio and timed from outside.
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(new URL('../../server/package.json', import.meta.url));
const { createMessageConnection, StreamMessageReader, StreamMessageWriter } = require('vscode-languageserver/node');

const milliseconds = (since) => Number(process.hrtime.bigint() - since) / 1e6;
const rest = (time) => new Promise((done) => setTimeout(done, time));

export class Server {
  missed = 0;
  #version = 0;
  #said = [];

  static async start(words, folder, settings) {
    const server = new Server();
    server.process = spawn(process.execPath, words, { stdio: ['pipe', 'pipe', 'ignore'] });
    const connection = createMessageConnection(
      new StreamMessageReader(server.process.stdout),
      new StreamMessageWriter(server.process.stdin),
    );
    server.connection = connection;
    connection.onRequest('workspace/configuration', ({ items }) =>
      items.map(({ section }) => (section ?? '').split('.').reduce((value, key) => value?.[key], settings) ?? null),
    );
    connection.onRequest('client/registerCapability', () => null);
    connection.onNotification('textDocument/publishDiagnostics', (params) => {
      for (const waiting of server.#said.splice(0)) waiting(params);
    });
    connection.listen();
    await connection.sendRequest('initialize', {
      processId: process.pid,
      rootUri: folder,
      workspaceFolders: [{ uri: folder, name: 'set' }],
      capabilities: {
        workspace: { configuration: true, workspaceFolders: true },
        textDocument: {
          publishDiagnostics: {
            relatedInformation: true,
            versionSupport: true,
            codeDescriptionSupport: true,
            dataSupport: true,
          },
          completion: { completionItem: { snippetSupport: true, documentationFormat: ['markdown'] } },
          hover: { contentFormat: ['markdown'] },
        },
      },
    });
    await connection.sendNotification('initialized', {});
    await connection.sendNotification('workspace/didChangeConfiguration', { settings });
    await rest(500);
    return server;
  }

  async open(uri, languageId, text) {
    this.#version = 1;
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId, version: 1, text },
    });
    await rest(1500);
    this.text = text;
  }

  /** Milliseconds from the edit to the diagnostics that follow it. */
  async edit(uri, text) {
    const start = process.hrtime.bigint();
    const said = new Promise((done) => this.#said.push(done));
    await this.#change(uri, text);
    const params = await Promise.race([said, rest(10_000)]);
    if (params === undefined || (params.version !== undefined && params.version !== this.#version)) this.missed += 1;
    const time = milliseconds(start);
    await rest(20);
    return time;
  }

  /** Milliseconds from an edit with a request sent right behind it to the answer. */
  async editAndAsk(uri, text, method, params) {
    const start = process.hrtime.bigint();
    await this.#change(uri, text);
    await this.connection.sendRequest(method, params);
    const time = milliseconds(start);
    await rest(20);
    return time;
  }

  /** Milliseconds of processor time used so far by every thread of the server. */
  processorTime() {
    const tasks = `/proc/${this.process.pid}/task`;
    return (
      readdirSync(tasks).reduce(
        (sum, task) => sum + Number(readFileSync(`${tasks}/${task}/schedstat`, 'utf8').split(' ')[0]),
        0,
      ) / 1e6
    );
  }

  async stop() {
    await this.connection.sendRequest('shutdown');
    await this.connection.sendNotification('exit');
    this.connection.dispose();
    this.process.kill();
  }

  async #change(uri, text) {
    this.#version += 1;
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version: this.#version },
      contentChanges: [{ text }],
    });
  }
}
