import type { Connection } from 'vscode-languageserver';
import type { Apart } from './apart.ts';
import { askEditor } from './own-requests.ts';
import type { Runtime } from './runtime.ts';

/** Loads what stands beside the server, once, when it is first wanted. Null where it cannot be had. */
export class ApartLoader {
  readonly #load: () => Promise<Apart | null>;
  #loading: Promise<Apart | null> | undefined;

  constructor(connection: Connection, runtime: Runtime, editorReads: () => boolean) {
    this.#load = async () => {
      if (runtime.apart === undefined) return null;
      const address: unknown = editorReads() ? await connection.sendRequest(askEditor.apartAddress, {}) : null;
      return runtime.apart(typeof address === 'string' ? address : null);
    };
  }

  load(): Promise<Apart | null> {
    this.#loading ??= this.#load().catch(() => null);
    return this.#loading;
  }
}
