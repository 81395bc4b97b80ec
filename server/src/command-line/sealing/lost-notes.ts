import { join } from 'node:path';
import { claimOf, envelopeDigest } from '../../note/seal/envelope.ts';
import { isNoteName, isPassedOver } from '../../note/set/set-layout.ts';
import { FileProblem, type Files } from '../world.ts';
import type { Link } from './chain.ts';
import { checking } from './keys.ts';
import { readSeals, SEAL_ENDING } from './seal-files.ts';

/** Notes whose seals lie in a folder or below and which are not there themselves, absolute. */
export function lostNotes(folder: string, files: Files): readonly string[] {
  return files.list(folder).flatMap(({ name, kind }) => {
    const path = join(folder, name);
    if (kind === 'folder') return isPassedOver(name) ? [] : lostNotes(path, files);
    if (!name.endsWith(SEAL_ENDING)) return [];
    const note = path.slice(0, -SEAL_ENDING.length);
    return isNoteName(note) && files.kind(note) !== 'file' ? [note] : [];
  });
}

/** Those of the lost notes whose seals follow a seal of a chain: amendments of it that are gone. */
export function lostOf(chain: readonly Link[], lost: readonly string[], files: Files): readonly string[] {
  const known = new Set(chain.flatMap(({ seals }) => seals.map((seal) => envelopeDigest(seal, checking))));
  return lost.filter((note) => known.has(firstFollows(note, files) ?? ''));
}

/** The digest of the seal that the first seal of a note says it follows. */
function firstFollows(note: string, files: Files): string | undefined {
  try {
    const [first] = readSeals(note, files);
    return first && claimOf(first)?.predicate.previousSeal?.sha256;
  } catch (error) {
    if (error instanceof FileProblem) return undefined;
    throw error;
  }
}
