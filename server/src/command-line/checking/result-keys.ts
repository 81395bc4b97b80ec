import { dirname, join } from 'node:path';
import { DEPARTMENT_FILE, isNoteName } from '../../note/set/set-layout.ts';
import type { Input } from '../find-notes.ts';
import type { SetFolder, SetFolders } from '../set-folders.ts';
import { contentHash } from './content-hash.ts';
import type { Hashes } from './hashes.ts';
import type { SetFacts } from './set-facts.ts';

/** Everything a result depends on beside the notes opened while checking. */
export interface ResultKey {
  /** Hash of the note's text. */
  readonly text: string;
  /** The note's name, which remarks repeat. */
  readonly file: string;
  /** Hash of what stands around it: department file, facts of all notes of its set, the day. */
  readonly around: string;
}

interface Around {
  readonly sets: SetFolders;
  readonly facts: SetFacts;
  readonly hashes: Hashes;
  /** The department file that was named, absolute. */
  readonly given: string | undefined;
  readonly day: string;
}

/** For every input what its result depends on; undefined for standard input and for what cannot be read. */
export function keysOf(
  inputs: readonly Input[],
  { sets, facts, hashes, given, day }: Around,
): readonly (ResultKey | undefined)[] {
  const known = new Map<string, string>();
  const aroundOf = (set: SetFolder): string => {
    let around = known.get(set.folder);
    if (around === undefined) {
      const own = departmentFile(set, given);
      const notes = sets
        .notesOf(set)
        .map((path) => `${JSON.stringify(path.slice(set.folder.length))} ${facts.writtenOf(path)}`);
      around = contentHash([own === null ? '' : hashes.of(own), day, ...notes].join('\n'));
      known.set(set.folder, around);
    }
    return around;
  };
  return inputs.map(({ path, file }) => {
    const text = path === null ? null : hashes.of(path);
    if (path === null || text === null) return undefined;
    return { text, file, around: isNoteName(path) ? aroundOf(sets.setAt(dirname(path))) : '' };
  });
}

/** The department file that counts for a set; null without any. */
function departmentFile({ folder, hasDepartment }: SetFolder, given: string | undefined): string | null {
  return given ?? (hasDepartment ? join(folder, DEPARTMENT_FILE) : null);
}

/** The department files that count for any of these inputs. */
export function departmentFiles(
  inputs: readonly Input[],
  sets: SetFolders,
  given: string | undefined,
): readonly string[] {
  const folders = new Set(inputs.flatMap(({ path }) => (path === null ? [] : [dirname(path)])));
  const files = [...folders].map((folder) => departmentFile(sets.setAt(folder), given));
  return [...new Set(files.filter((file) => file !== null))];
}
