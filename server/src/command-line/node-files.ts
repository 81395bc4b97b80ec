import { closeSync, mkdirSync, openSync, readFileSync, readdirSync, statSync, writeFileSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { FileProblem, type Files, type FileWriter } from './world.ts';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such folder',
  EACCES: 'it may not be opened by you',
  EPERM: 'it may not be opened by you',
  EISDIR: 'it is a folder',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk may only be read',
};

/** The disk. */
export const nodeFiles: Files = {
  read: (file) => plainly(() => readFileSync(file, 'utf8')),
  bytes: (file) => plainly(() => readFileSync(file)),
  write: (file, data) =>
    plainly(() => {
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, data);
    }),
  create: (file) =>
    plainly(() => {
      mkdirSync(dirname(file), { recursive: true });
      return writerOf(openSync(file, 'w'));
    }),
  kind: (path) => {
    const stat = statSync(path, { throwIfNoEntry: false });
    return stat === undefined ? null : stat.isDirectory() ? 'folder' : 'file';
  },
  list: (folder) =>
    plainly(() =>
      readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
        const kind = entry.isDirectory() ? 'folder' : entry.isFile() ? 'file' : undefined;
        return kind === undefined ? [] : [{ name: entry.name, kind } as const];
      }),
    ),
};

/** Pieces are gathered, because a system call for every line of a table would be slow. */
const GATHERED = 1 << 16;

function writerOf(descriptor: number): FileWriter {
  let waiting: Uint8Array[] = [];
  let size = 0;
  const flush = (): void => {
    const all = Buffer.concat(waiting);
    for (let at = 0; at < all.length;) at += writeSync(descriptor, all, at);
    waiting = [];
    size = 0;
  };
  return {
    write: (data) =>
      plainly(() => {
        const bytes = typeof data === 'string' ? Buffer.from(data) : data;
        waiting.push(bytes);
        size += bytes.length;
        if (size >= GATHERED) flush();
      }),
    close: () =>
      plainly(() => {
        flush();
        closeSync(descriptor);
      }),
  };
}

function plainly<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    throw new FileProblem(reasons[code] ?? 'the system refused it', { cause: error });
  }
}
