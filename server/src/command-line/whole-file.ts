import { isUtf8 } from 'node:buffer';
import {
  accessSync,
  chmodSync,
  constants,
  mkdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { FileProblem } from './world.ts';

/** The text of a file, a byte order mark included. Throws FileProblem for bytes that are no UTF-8. */
export function readWhole(file: string): string {
  return textOf(readFileSync(file), 'open it in an editor, see that every letter is right, and save it as UTF-8');
}

/** Text from bytes. Where they are no UTF-8 letters would be guessed, and lost with the next writing: a FileProblem. */
export function textOf(bytes: Buffer, whatToDo: string): string {
  if (!isUtf8(bytes)) throw new FileProblem(`it is not UTF-8, so not every letter can be read; ${whatToDo}`);
  return bytes.toString('utf8');
}

/** Files that are being written are told apart by number. */
let written = 0;

/**
 * Writes a file as a whole or not at all: first beside its place, then into it, so that whatever goes wrong in between
 * leaves the file as it was. What is no plain file, such as a terminal or a pipe, is written to as it is.
 */
export function writeWhole(file: string, data: string | Uint8Array): void {
  mkdirSync(dirname(file), { recursive: true });
  const before = statSync(file, { throwIfNoEntry: false });
  if (before?.isFile() === false) {
    writeFileSync(file, data);
    return;
  }
  // A file that may not be written to stays, though its folder would let it be replaced.
  if (before !== undefined) accessSync(file, constants.W_OK);
  // A link goes on leading to where it leads.
  const place = before === undefined ? file : realpathSync(file);
  const beside = join(dirname(place), `.${process.pid}-${++written}.part`);
  writeNew(beside, data);
  try {
    if (before !== undefined) chmodSync(beside, before.mode);
    renameSync(beside, place);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

function writeNew(file: string, data: string | Uint8Array): void {
  try {
    writeFileSync(file, data, { flag: 'wx' });
  } catch (error) {
    const isOthers = error instanceof Error && 'code' in error && error.code === 'EEXIST';
    if (!isOthers) rmSync(file, { force: true });
    throw error;
  }
}
