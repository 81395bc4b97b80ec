import { join } from 'node:path';
import { FileProblem, type Files } from '../world.ts';
import { contentHash } from './content-hash.ts';

/** A file in which a run leaves something for the next one, with a sum that shows whether it is as it was written. */
export interface KeptFile {
  readonly path: string;
  /** Names what the file holds and in which form. */
  readonly header: string;
}

/** What was left under this key; undefined for another key, and for a file that is not as it was written. */
export function readKept(files: Files, { path, header }: KeptFile, key: string): string | undefined {
  if (files.kind(path) !== 'file') return undefined;
  try {
    const text = files.read(path);
    const first = text.indexOf('\n');
    const second = text.indexOf('\n', first + 1);
    const third = text.indexOf('\n', second + 1);
    if (text.slice(0, first) !== header || text.slice(first + 1, second) !== key) return undefined;
    const body = text.slice(third + 1);
    return text.slice(second + 1, third) === contentHash(body) ? body : undefined;
  } catch (error) {
    if (error instanceof FileProblem) return undefined;
    throw error;
  }
}

/** Leaves something. A folder that may not be written to is no fault: the next run does it again. */
export function writeKept(files: Files, { path, header }: KeptFile, key: string, body: string): void {
  try {
    // Whatever keeps the notes under version control must not take this in.
    files.write(join(path, '..', '.gitignore'), '*\n');
    files.write(path, [header, key, contentHash(body), body].join('\n'));
  } catch (error) {
    if (!(error instanceof FileProblem)) throw error;
  }
}
