import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { DEPARTMENT_FILE, NOTE_ENDING } from './addresses.ts';
import type { SetFiles } from './runtime.ts';

const PASSED_OVER = new Set(['node_modules', '.git']);
const DEEPEST = 12;

/** The set as it stands on the machine's own disk. Linked folders are not followed. */
export const diskFiles: SetFiles = {
  list: async (folder, deep) => {
    const path = pathOf(folder);
    return path === undefined ? [] : (await below(path, deep ? DEEPEST : 0)).map((file) => pathToFileURL(file).href);
  },
  read: async (uri) => {
    const path = pathOf(uri);
    if (path === undefined) return null;
    try {
      return await readFile(path, 'utf8');
    } catch {
      return null;
    }
  },
};

function pathOf(uri: string): string | undefined {
  try {
    return fileURLToPath(uri);
  } catch {
    return undefined;
  }
}

async function below(folder: string, depth: number): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const lists = await Promise.all(
    entries.map(async (entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return depth > 0 && !PASSED_OVER.has(entry.name) ? below(path, depth - 1) : [];
      return entry.isFile() && (entry.name.endsWith(NOTE_ENDING) || entry.name === DEPARTMENT_FILE) ? [path] : [];
    }),
  );
  return lists.flat();
}
