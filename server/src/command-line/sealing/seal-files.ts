import { envelope, jsonOf, sealFile, type Envelope } from '../../note/seal/envelope.ts';
import { writeOutput } from '../write-output.ts';
import { FileProblem, type Files, type World } from '../world.ts';

export const SEAL_ENDING = '.seal.json';

/** The seals of a note stand beside it. */
export const sealPath = (note: string): string => note + SEAL_ENDING;

/** The seals of a note, oldest first; none when there is no such file. A damaged file is a FileProblem. */
export function readSeals(note: string, files: Files): readonly Envelope[] {
  const path = sealPath(note);
  if (files.kind(path) !== 'file') return [];
  const data = jsonOf(files.read(path));
  const read = sealFile.safeParse(data);
  if (read.success) return read.data.seals;
  const single = envelope.safeParse(data);
  if (single.success) return [single.data];
  throw new FileProblem('the file of seals beside it is damaged');
}

export function writeSeals(note: string, seals: readonly Envelope[], world: World): void {
  writeOutput(`${JSON.stringify({ version: 1, seals }, null, 2)}\n`, sealPath(note), world);
}
