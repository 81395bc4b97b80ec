import type { Connection } from 'vscode-languageserver';
import { askEditor } from './own-requests.ts';
import type { SetFiles } from './runtime.ts';

/** The set as the editor reaches it: on another machine, in a repository on the web, in a browser. */
export function editorFiles(connection: Connection): SetFiles {
  return {
    list: async (folder, deep) => {
      const found: unknown = await connection.sendRequest(askEditor.listSet, { folder, deep });
      return Array.isArray(found) ? found.filter((uri) => typeof uri === 'string') : [];
    },
    read: async (uri) => {
      const text: unknown = await connection.sendRequest(askEditor.readFile, { uri });
      return typeof text === 'string' ? text : null;
    },
  };
}

/** Files on the machine's own disk are read there, all others through the editor where it can. */
export function filesOf(disk: SetFiles | undefined, editor: SetFiles | undefined): SetFiles {
  const filesFor = (uri: string) =>
    disk !== undefined && (editor === undefined || uri.startsWith('file:')) ? disk : editor;
  return {
    list: async (folder, deep) => (await filesFor(folder)?.list(folder, deep)) ?? [],
    read: async (uri) => (await filesFor(uri)?.read(uri)) ?? null,
  };
}
