import * as vscode from 'vscode';
import {
  State,
  type BaseLanguageClient,
  type GenericRequestHandler,
  type LanguageClientOptions,
} from 'vscode-languageclient';
import { editorCommands, type EditorOptions } from '@sideport/server/language-server/own-requests.ts';
import { documentSelector } from './documents.ts';
import { linkToPage } from './pages.ts';
import { proposalMiddleware } from './proposals.ts';

/** Builds a client that is not started yet; how the server runs (a process or a worker) is the entry's business. */
export type MakeClient = (options: LanguageClientOptions) => BaseLanguageClient;

export type Checking = 'starting' | 'checking' | 'not checking';

const CHECKING: Readonly<Record<State, Checking>> = {
  [State.Starting]: 'starting',
  [State.Running]: 'checking',
  [State.Stopped]: 'not checking',
  [State.StartFailed]: 'not checking',
};

/** The one running server, and whether it is checking. */
export class NoteClient implements vscode.Disposable {
  readonly #make: () => BaseLanguageClient;
  readonly #handlers = new Map<string, GenericRequestHandler<unknown, void>>();
  #client: BaseLanguageClient;
  readonly #changed = new vscode.EventEmitter<Checking>();
  readonly #checked = new Set<string>();
  readonly onChanged = this.#changed.event;
  checking: Checking = 'starting';

  constructor(make: MakeClient) {
    const initializationOptions: EditorOptions = { commands: Object.values(editorCommands), files: true };
    const options = (): LanguageClientOptions => ({
      documentSelector: documentSelector(),
      initializationOptions,
      progressOnInitialization: true,
      middleware: {
        ...proposalMiddleware,
        handleDiagnostics: (uri, diagnostics, next) => {
          this.#checked.add(uri.toString());
          next(uri, diagnostics.map(linkToPage));
          this.#changed.fire(this.checking);
        },
        didClose: (document, next) => {
          this.#checked.delete(document.uri.toString());
          return next(document);
        },
      },
    });
    this.#make = () => this.#watched(make(options()));
    this.#client = this.#make();
  }

  /** Whether the server has spoken about the file since it started: no remarks yet is not the same as no remarks. */
  hasChecked(uri: vscode.Uri): boolean {
    return this.#checked.has(uri.toString());
  }

  async start(): Promise<void> {
    try {
      await this.#client.start();
    } catch {
      this.#set('not checking');
    }
  }

  /** Starts over with a new client: one whose server died while it was starting never starts again. */
  async restart(): Promise<void> {
    const former = this.#client;
    this.#client = this.#make();
    for (const [method, handler] of this.#handlers) this.#client.onRequest(method, handler);
    await former.dispose().catch(() => undefined);
    await this.start();
  }

  /** The answer, or null when no server answers: a page that cannot be made is said to be missing, never a failure. */
  async ask<Answer>(method: string, params: object): Promise<Answer | null> {
    try {
      return await this.#client.sendRequest<Answer>(method, params);
    } catch {
      return null;
    }
  }

  /** Answers what the server asks, this one and any that is started after it. */
  answer(method: string, handler: GenericRequestHandler<unknown, void>): void {
    this.#handlers.set(method, handler);
    this.#client.onRequest(method, handler);
  }

  dispose(): void {
    this.#changed.dispose();
    void this.#client.dispose().catch(() => undefined);
  }

  #watched(client: BaseLanguageClient): BaseLanguageClient {
    client.onDidChangeState(({ newState }) => {
      if (client === this.#client) this.#set(CHECKING[newState]);
    });
    return client;
  }

  #set(checking: Checking): void {
    this.checking = checking;
    if (checking !== 'checking') this.#checked.clear();
    this.#changed.fire(checking);
  }
}
