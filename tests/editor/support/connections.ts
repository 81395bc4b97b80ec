import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import {
  AbstractMessageReader,
  AbstractMessageWriter,
  createMessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type DataCallback,
  type Disposable,
  type Message,
  type MessageConnection,
} from 'vscode-languageserver/node';

export interface Connection {
  readonly connection: MessageConnection;
  readonly stop: () => Promise<void>;
}

const dist = fileURLToPath(new URL('../../../server/dist/', import.meta.url));

/** The server as Neovim and Emacs start it. */
export function connectToProcess(): Connection {
  const server = spawn(process.execPath, [`${dist}language-server.cjs`, '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const connection = createMessageConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  connection.listen();
  return {
    connection,
    stop: async () => {
      connection.dispose();
      server.kill();
    },
  };
}

declare global {
  // Set in the page that holds the worker.
  var noteWorker: Worker;
  function hearFromWorker(message: Message): Promise<void>;
}

/** The server as a web worker of a page in Chromium, with no Node beside it. */
export async function connectToWorker(page: Page): Promise<Connection> {
  const reader = new WorkerReader();
  await page.exposeFunction('hearFromWorker', (message: Message) => reader.hear(message));
  await page.evaluate(
    (source) => {
      const address = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }));
      globalThis.noteWorker = new Worker(address);
      globalThis.noteWorker.addEventListener('message', ({ data }: MessageEvent<Message>) => void hearFromWorker(data));
    },
    readFileSync(`${dist}language-server.worker.js`, 'utf8'),
  );
  const connection = createMessageConnection(reader, new WorkerWriter(page));
  connection.listen();
  return { connection, stop: async () => connection.dispose() };
}

class WorkerReader extends AbstractMessageReader {
  #callback: DataCallback | undefined;

  listen(callback: DataCallback): Disposable {
    this.#callback = callback;
    return { dispose: () => (this.#callback = undefined) };
  }

  hear(message: Message): void {
    this.#callback?.(message);
  }
}

class WorkerWriter extends AbstractMessageWriter {
  readonly #page: Page;

  constructor(page: Page) {
    super();
    this.#page = page;
  }

  async write(message: Message): Promise<void> {
    await this.#page.evaluate((sent) => globalThis.noteWorker.postMessage(sent), message);
  }

  end(): void {}
}
