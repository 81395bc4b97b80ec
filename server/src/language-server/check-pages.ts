import type { Connection } from 'vscode-languageserver';
import { askEditor } from './own-requests.ts';
import type { Runtime } from './runtime.ts';

/** Finds the page of a check among the pages beside the server, or asks the editor for them; reads them once. */
export function checkPageOf(connection: Connection, runtime: Runtime, editorReads: () => boolean) {
  let pages: Promise<ReadonlyMap<string, string>> | undefined;
  const read = async (): Promise<unknown> => {
    if (runtime.checkPages !== undefined) return runtime.checkPages();
    return editorReads() ? await connection.sendRequest(askEditor.readCheckPages, {}) : null;
  };
  return async (check: string): Promise<string | undefined> => {
    pages ??= read()
      .then(pagesIn)
      .catch((fault: unknown) => {
        // Asked again, they may be had.
        pages = undefined;
        throw fault;
      });
    return (await pages).get(check);
  };
}

function pagesIn(text: unknown): ReadonlyMap<string, string> {
  const found: unknown = typeof text === 'string' ? JSON.parse(text) : {};
  const entries = typeof found === 'object' && found !== null ? Object.entries(found) : [];
  return new Map(entries.filter((entry): entry is [string, string] => typeof entry[1] === 'string'));
}
