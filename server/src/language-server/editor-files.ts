import type { Connection } from 'vscode-languageserver';
import { askEditor, type FileParams, type FolderEntry, type FolderParams, type StoredFile } from './own-requests.ts';
import type { SetFiles } from './runtime.ts';

/** The set as the editor reaches it: on another machine, in a repository on the web, in a browser. */
export function editorFiles(connection: Connection): SetFiles {
  return {
    list: async (folder) => {
      const asked: FolderParams = { folder };
      const found: unknown = await connection.sendRequest(askEditor.listFolder, asked);
      return Array.isArray(found) ? found.filter(isEntry) : [];
    },
    read: async (uri) => {
      const asked: FileParams = { uri };
      const found: unknown = await connection.sendRequest(askEditor.readFile, asked);
      return isStored(found) ? found : null;
    },
    reachesAbove: () => false,
  };
}

/** Files on the machine's own disk are read there, all others through the editor where it can. */
export function filesOf(disk: SetFiles | undefined, editor: SetFiles | undefined): SetFiles {
  const filesFor = (uri: string) =>
    disk !== undefined && (editor === undefined || uri.startsWith('file:')) ? disk : editor;
  return {
    list: async (folder) => (await filesFor(folder)?.list(folder)) ?? [],
    read: async (uri) => (await filesFor(uri)?.read(uri)) ?? null,
    reachesAbove: (uri) => filesFor(uri)?.reachesAbove(uri) === true,
  };
}

/** Answers come from outside: only what has the right shape counts. */
function isEntry(entry: unknown): entry is FolderEntry {
  if (typeof entry !== 'object' || entry === null || !('name' in entry && 'kind' in entry)) return false;
  return typeof entry.name === 'string' && ['file', 'folder', 'other'].includes(String(entry.kind));
}

function isStored(file: unknown): file is StoredFile {
  if (typeof file !== 'object' || file === null || !('text' in file)) return false;
  return file.text === null || typeof file.text === 'string';
}
