import { isUtf8 } from 'node:buffer';
import type { Dirent } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { FolderEntry } from './own-requests.ts';
import type { SetFiles } from './runtime.ts';

/** What is no passing trouble: asked again, the answer is the same. */
const NOT_THERE = new Set(['ENOENT', 'ENOTDIR', 'EISDIR', 'EACCES', 'EPERM', 'ELOOP', 'ENAMETOOLONG']);

/** The machine's own disk. */
export const diskFiles: SetFiles = {
  list: async (folder) => {
    const entries = await whereThere(folder, (path) => readdir(path, { withFileTypes: true }));
    return (entries ?? []).map((entry) => ({ name: entry.name, kind: kindOf(entry) }));
  },
  read: async (uri) => {
    const bytes = await whereThere(uri, (path) => readFile(path));
    return bytes === null ? null : { text: isUtf8(bytes) ? bytes.toString('utf8') : null };
  },
  reachesAbove: () => true,
};

async function whereThere<T>(uri: string, ask: (path: string) => Promise<T>): Promise<T | null> {
  const path = pathOf(uri);
  if (path === undefined) return null;
  try {
    return await ask(path);
  } catch (error) {
    if (error instanceof Error && 'code' in error && NOT_THERE.has(String(error.code))) return null;
    throw error;
  }
}

function pathOf(uri: string): string | undefined {
  try {
    return fileURLToPath(uri);
  } catch {
    return undefined;
  }
}

function kindOf(entry: Dirent): FolderEntry['kind'] {
  if (entry.isDirectory()) return 'folder';
  return entry.isFile() ? 'file' : 'other';
}
