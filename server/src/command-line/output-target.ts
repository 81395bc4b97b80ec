import { basename, resolve } from 'node:path';
import { isNoteName } from '../note/set/set-layout.ts';
import { isDepartmentName } from './file-names.ts';
import { REGISTER_FILE, REVOKED_FILE } from './sealing/register.ts';
import { SEAL_ENDING, sealPath } from './sealing/seal-files.ts';
import { WrongUse, type World } from './world.ts';

/**
 * Refuses to write what was made from notes over notes, or over what they are read with: nothing written by a person is
 * lost by a slip of the option. Throws WrongUse.
 * @param read the files that the command reads, as they were named
 */
export function refuseOutputOverNotes(
  output: string | undefined,
  read: readonly (string | undefined)[],
  world: World,
): void {
  if (output === undefined) return;
  const kind = kindOf(output);
  if (kind !== undefined)
    throw new WrongUse(
      `--output ${output} has the name of ${kind}: what is written would take its place or be read as one. Name another file.`,
    );
  const target = resolve(world.folder, output);
  const isRead = (file: string | undefined): boolean => file !== undefined && resolve(world.folder, file) === target;
  if (world.files.kind(target) === 'file' && read.some(isRead))
    throw new WrongUse(`--output ${output} is one of the files that are read, which would be lost. Name another file.`);
}

/**
 * Lets a note be written to a new file, or in the place of the one that it completes while that is not sealed, and
 * nowhere else. Throws WrongUse.
 */
export function refuseOutputOverOtherNote(
  output: string | undefined,
  completed: string | undefined,
  world: World,
): void {
  const target = output === undefined ? undefined : resolve(world.folder, output);
  if (target === undefined || world.files.kind(target) !== 'file') return;
  const isCompleted = completed !== undefined && resolve(world.folder, completed) === target && isNoteName(target);
  if (!isCompleted) return refuseOutputOverNotes(output, [completed], world);
  if (world.files.kind(sealPath(target)) !== null)
    throw new WrongUse(
      `--output ${output}: this note is sealed and stays as it is. Write an amendment: sideport amend.`,
    );
}

function kindOf(file: string): string | undefined {
  if (isNoteName(file)) return 'a note';
  if (isDepartmentName(file)) return 'a department file';
  if (file.endsWith(SEAL_ENDING)) return 'a file of seals';
  return [REGISTER_FILE, REVOKED_FILE].includes(basename(file)) ? 'a register of signers' : undefined;
}
