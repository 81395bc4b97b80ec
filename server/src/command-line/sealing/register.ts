import { join, resolve } from 'node:path';
import { readRevoked, readSigners } from '../../note/seal/signers.ts';
import type { Register } from '../../note/seal/verify-seals.ts';
import { FileProblem, type World } from '../world.ts';

export const REGISTER_FILE = 'allowed_signers';
export const REVOKED_FILE = 'revoked_signers';

/** The register of signers of a set, with what could not be read of it; undefined when there is none. */
export function readRegister(
  named: string | undefined,
  setFolder: string,
  world: World,
): (Register & { readonly problems: readonly string[] }) | undefined {
  const path = named === undefined ? join(setFolder, REGISTER_FILE) : resolve(world.folder, named);
  if (world.files.kind(path) !== 'file') {
    if (named === undefined) return undefined;
    throw new FileProblem(`${named}: there is no such file.`);
  }
  const { signers, unread } = readSigners(world.files.read(path));
  const revokedPath = join(setFolder, REVOKED_FILE);
  const revoked = world.files.kind(revokedPath) === 'file' ? readRevoked(world.files.read(revokedPath)) : [];
  const problems = unread.map(
    (line) => `Line ${line} of the register of signers could not be read; it was passed over.`,
  );
  return { signers, revoked, problems };
}
