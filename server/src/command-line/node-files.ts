import { closeSync, mkdirSync, openSync, readFileSync, readdirSync, statSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { readWhole, writeWhole } from './whole-file.ts';
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
  read: (file) => plainly(() => readWhole(file)),
  bytes: (file) => plainly(() => readFileSync(file)),
  write: (file, data) => plainly(() => writeWhole(file, data)),
  create: (file) =>
    plainly(() => {
      mkdirSync(dirname(file), { recursive: true });
      return writerOf(openSync(file, 'w'));
    }),
  kind: (path) => {
    try {
      return statSync(path).isDirectory() ? 'folder' : 'file';
    } catch (error) {
      // Nothing is there, and nothing below a file.
      if (codeOf(error) === 'ENOENT' || codeOf(error) === 'ENOTDIR') return null;
      throw error;
    }
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
const GATHERED = 1 << 18;
/** Bytes that one UTF-16 unit can take in UTF-8. */
const MOST_BYTES = 3;

function writerOf(descriptor: number): FileWriter {
  const gathered = Buffer.allocUnsafe(GATHERED);
  let size = 0;
  const put = (bytes: Uint8Array): void => {
    for (let at = 0; at < bytes.length;) at += writeSync(descriptor, bytes, at);
  };
  const flush = (): void => {
    put(gathered.subarray(0, size));
    size = 0;
  };
  return {
    write: (data) =>
      plainly(() => {
        const most = typeof data === 'string' ? data.length * MOST_BYTES : data.length;
        if (most > GATHERED - size) flush();
        if (most > GATHERED) put(typeof data === 'string' ? Buffer.from(data) : data);
        else if (typeof data === 'string') size += gathered.write(data, size);
        else {
          gathered.set(data, size);
          size += data.length;
        }
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
    throw error instanceof FileProblem ? error : new FileProblem(reasonOf(error), { cause: error });
  }
}

/** Why the system refused something, in plain words. */
export const reasonOf = (error: unknown): string => reasons[codeOf(error)] ?? 'the system refused it';

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '');
