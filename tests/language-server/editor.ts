import { PassThrough } from 'node:stream';
import {
  createConnection,
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type ClientCapabilities,
  type Diagnostic,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type TextDocumentContentChangeEvent,
} from 'vscode-languageserver/node';
import { checkPages } from '../../server/src/note/checks/explain.ts';
import type { Runtime } from '../../server/src/language-server/runtime.ts';
import { startNoteServer } from '../../server/src/language-server/start-server.ts';
import { CURSOR } from '../editing/mark.ts';
import { MemoryFiles } from './memory-files.ts';

export const fullCapabilities: ClientCapabilities = {
  workspace: { workspaceEdit: { documentChanges: true, resourceOperations: ['create'], changeAnnotationSupport: {} } },
  textDocument: {
    completion: {
      completionItem: { snippetSupport: true, insertReplaceSupport: true, documentationFormat: ['markdown'] },
    },
    hover: { contentFormat: ['markdown'] },
    publishDiagnostics: {
      relatedInformation: true,
      codeDescriptionSupport: true,
      dataSupport: true,
      versionSupport: true,
    },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
  },
};

interface Setting {
  readonly files?: MemoryFiles;
  readonly capabilities?: ClientCapabilities;
  readonly initializationOptions?: object;
  readonly folders?: readonly string[];
  readonly practice?: number;
  /** Called whenever the server puts work off. */
  readonly onTurn?: () => void;
}

/** An editor that talks to the server through the protocol, for tests. */
export class TestEditor {
  readonly connection: ProtocolConnection;
  readonly published: PublishDiagnosticsParams[] = [];
  readonly logged: string[] = [];
  initialized!: InitializeResult;
  readonly #waiting: { readonly is: (params: PublishDiagnosticsParams) => boolean; readonly done: () => void }[] = [];
  readonly #texts = new Map<string, { text: string; version: number }>();

  constructor(connection: ProtocolConnection) {
    this.connection = connection;
    connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      this.published.push(params);
      for (const waiting of this.#waiting) if (waiting.is(params)) waiting.done();
    });
    connection.onNotification(
      'window/logMessage',
      ({ message }: { message: string }) => void this.logged.push(message),
    );
    connection.onRequest('client/registerCapability', () => null);
    connection.listen();
  }

  /** A server in this process, over streams in memory. */
  static async inProcess(setting: Setting = {}): Promise<TestEditor> {
    const [up, down] = [new PassThrough(), new PassThrough()];
    const runtime: Runtime = {
      later: (work) => {
        setting.onTurn?.();
        setImmediate(() => setImmediate(work));
      },
      ...(setting.practice !== undefined && { practice: setting.practice }),
      files: setting.files ?? new MemoryFiles(),
      checkPages: async () => JSON.stringify(checkPages()),
      apart: async () => (await import('../../server/src/language-server/apart.ts')).newApart(),
      today: () => '2031-03-20',
    };
    startNoteServer(createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)), runtime);
    const connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    return new TestEditor(connection).#initialize(setting);
  }

  static async over(connection: ProtocolConnection, setting: Setting = {}): Promise<TestEditor> {
    return new TestEditor(connection).#initialize(setting);
  }

  async #initialize({ capabilities, initializationOptions, folders }: Setting): Promise<TestEditor> {
    this.initialized = await this.connection.sendRequest('initialize', {
      processId: null,
      rootUri: null,
      capabilities: capabilities ?? fullCapabilities,
      initializationOptions: initializationOptions ?? {},
      workspaceFolders: (folders ?? []).map((uri) => ({ uri, name: uri })),
    });
    await this.connection.sendNotification('initialized', {});
    return this;
  }

  async open(uri: string, text: string, languageId = 'opnote'): Promise<readonly Diagnostic[]> {
    this.#texts.set(uri, { text, version: 1 });
    const said = this.#next((params) => params.uri === uri);
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri, languageId, version: 1, text },
    });
    await said;
    return this.diagnostics(uri);
  }

  /** Opens a text with a cursor mark; answers the position of the cursor. */
  async openAt(uri: string, marked: string) {
    await this.open(uri, marked.replace(CURSOR, ''));
    return { textDocument: { uri }, position: this.position(uri, marked.indexOf(CURSOR)) };
  }

  /** Replaces the whole text; does not wait. */
  async type(uri: string, text: string): Promise<number> {
    const version = (this.#texts.get(uri)?.version ?? 0) + 1;
    this.#texts.set(uri, { text, version });
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: [{ text }],
    });
    return version;
  }

  /** Changes parts of the text, one after the other; does not wait. */
  async change(uri: string, changes: readonly TextDocumentContentChangeEvent[], text: string): Promise<number> {
    const version = (this.#texts.get(uri)?.version ?? 0) + 1;
    this.#texts.set(uri, { text, version });
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version },
      contentChanges: changes,
    });
    return version;
  }

  async save(uri: string): Promise<void> {
    await this.connection.sendNotification('textDocument/didSave', { textDocument: { uri } });
  }

  /** Says that files were changed by something else. */
  async filesChanged(...uris: readonly string[]): Promise<void> {
    const changes = uris.map((uri) => ({ uri, type: 2 }));
    await this.connection.sendNotification('workspace/didChangeWatchedFiles', { changes });
  }

  async edit(uri: string, text: string): Promise<readonly Diagnostic[]> {
    const version = (this.#texts.get(uri)?.version ?? 0) + 1;
    const said = this.#next((params) => params.uri === uri && params.version === version);
    await this.type(uri, text);
    await said;
    return this.diagnostics(uri);
  }

  async close(uri: string): Promise<void> {
    const said = this.#next((params) => params.uri === uri && params.diagnostics.length === 0);
    await this.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
    await said;
  }

  /** What was said last about a document. */
  diagnostics(uri: string): readonly Diagnostic[] {
    return this.published.findLast((params) => params.uri === uri)?.diagnostics ?? [];
  }

  checks(uri: string): readonly unknown[] {
    return this.diagnostics(uri).map(({ code }) => code);
  }

  /** Waits until a document's remarks are as asked. */
  async until(uri: string, is: (checks: readonly unknown[]) => boolean): Promise<void> {
    if (is(this.checks(uri))) return;
    await this.#next((params) => params.uri === uri && is(params.diagnostics.map(({ code }) => code)));
  }

  request<Answer>(method: string, params: object): Promise<Answer> {
    return this.connection.sendRequest(method, params);
  }

  position(uri: string, offset: number) {
    const before = (this.#texts.get(uri)?.text ?? '').slice(0, offset).split(/\r\n|\r|\n/);
    return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
  }

  async stop(): Promise<void> {
    await this.connection.sendRequest('shutdown');
    this.connection.dispose();
  }

  #next(is: (params: PublishDiagnosticsParams) => boolean): Promise<void> {
    return new Promise((done) => void this.#waiting.push({ is, done }));
  }
}

/** Lets messages and work put off have so many turns. */
export async function turns(count: number): Promise<void> {
  for (let turn = 0; turn < count; turn++) await new Promise((done) => void setImmediate(done));
}

/** The text after edits of the protocol. */
export function applied(
  text: string,
  edits: readonly { readonly range: { start: Place; end: Place }; readonly newText: string }[],
): string {
  const starts = [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map(({ 0: end, index }) => index + end.length)];
  const offset = ({ line, character }: Place) => (starts[line] ?? text.length) + character;
  return edits
    .toSorted((a, b) => offset(b.range.start) - offset(a.range.start))
    .reduce(
      (before, { range, newText }) => before.slice(0, offset(range.start)) + newText + before.slice(offset(range.end)),
      text,
    );
}

interface Place {
  readonly line: number;
  readonly character: number;
}
