import type { FolderEntry, StoredFile } from '../../server/src/language-server/own-requests.ts';
import type { SetFiles } from '../../server/src/language-server/runtime.ts';

/** Files in memory, by address. Without an editor in between, so that folders above can be read. */
export class MemoryFiles implements SetFiles {
  /** Null: not text in UTF-8. */
  readonly content: Map<string, string | null>;
  /** Addresses of links. */
  readonly links = new Set<string>();
  /** What a question waits for once its answer is settled; rejects where nothing can be reached. */
  wait: (uri: string) => Promise<unknown> = () => Promise.resolve();
  readonly #reachesAbove: boolean;

  constructor(content: Readonly<Record<string, string | null>> = {}, reachesAbove = true) {
    this.content = new Map(Object.entries(content));
    this.#reachesAbove = reachesAbove;
  }

  async list(folder: string): Promise<readonly FolderEntry[]> {
    const entries = new Map<string, FolderEntry['kind']>();
    for (const uri of [...this.content.keys(), ...this.links]) {
      if (!uri.startsWith(`${folder}/`)) continue;
      const [name = '', ...below] = uri.slice(folder.length + 1).split('/');
      entries.set(decodeURIComponent(name), this.links.has(uri) ? 'other' : below.length > 0 ? 'folder' : 'file');
    }
    await this.wait(folder);
    return [...entries].map(([name, kind]) => ({ name, kind }));
  }

  async read(uri: string): Promise<StoredFile | null> {
    const text = this.content.get(uri);
    await this.wait(uri);
    return text === undefined ? null : { text };
  }

  reachesAbove(): boolean {
    return this.#reachesAbove;
  }
}
