import { createHmac, randomBytes } from 'node:crypto';
import { resolve, sep } from 'node:path';
import { FileProblem, WrongUse, type World } from '../world.ts';

/** Characters that a key file must have at least; 128 bits in hexadecimal. */
const SHORTEST = 32;

export interface Key {
  readonly keyedHash: (text: string) => string;
  /** A sentence for the person who exports. */
  readonly remark?: string;
}

/**
 * The key of the pseudonyms: from a file that is kept apart from the notes, or one that is thrown away after this run.
 * @param noteFolders the folders of the sets whose notes are exported
 */
export function readKey(file: string | undefined, noteFolders: readonly string[], world: World): Key {
  if (file === undefined) {
    const remark =
      'No key was named, so a key was made for this run and thrown away: the same person has another pseudonym next time. Name a key file to keep them: --key FILE.';
    return { keyedHash: hashWith(randomBytes(32)), remark };
  }
  const path = resolve(world.folder, file);
  if (noteFolders.some((folder) => path === folder || path.startsWith(folder + sep))) {
    throw new WrongUse(
      `The key ${file} lies among the notes: whoever has both can name every person. Keep it elsewhere.`,
    );
  }
  let text: string;
  try {
    text = world.files.read(path).trim();
  } catch (error) {
    throw error instanceof FileProblem ? new FileProblem(`${file}: ${error.message}.`) : error;
  }
  if (text.length < SHORTEST) {
    throw new WrongUse(
      `The key in ${file} is too short to keep anyone from guessing it: it needs ${SHORTEST} characters or more, such as openssl rand -hex 32 gives.`,
    );
  }
  return { keyedHash: hashWith(text) };
}

function hashWith(key: string | Uint8Array): Key['keyedHash'] {
  return (text) => createHmac('sha256', key).update(text).digest('hex');
}
