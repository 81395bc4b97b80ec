import { dirname, join, resolve } from 'node:path';
import { factsIn, type NoteFacts } from '../../note/set/note-set.ts';
import { isNoteName } from '../../note/set/set-layout.ts';
import { isDepartmentName, shownAs } from '../file-names.ts';
import type { Input } from '../find-notes.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';

/** Asks git; null where the folder is under no version control or git does not know the revision. */
export type AskGit = (words: readonly string[], folder: string) => Promise<string | null>;

const names = (list: string): readonly string[] => list.split('\0').filter((name) => name !== '');

interface Changes {
  /** Absolute paths, of files that are gone as well. */
  readonly paths: ReadonlySet<string>;
  readonly top: string;
}

async function changesSince(revision: string, ask: AskGit, folder: string): Promise<Changes> {
  const top = (await ask(['rev-parse', '--show-toplevel'], folder))?.trim();
  if (top === undefined) throw new WrongUse('--changed-since needs notes that are kept in git.');
  // A revision that begins with a dash would be taken for an option.
  const commit = revision.startsWith('-')
    ? null
    : await ask(['rev-parse', '--verify', '--quiet', `${revision}^{commit}`], folder);
  if (commit === null) throw new WrongUse(`git knows no revision ${revision}.`);
  const tracked = await ask(['diff', '--name-only', '--no-renames', '-z', commit.trim(), '--'], top);
  const untracked = await ask(['ls-files', '--others', '--exclude-standard', '-z'], top);
  const paths = [...names(tracked ?? ''), ...names(untracked ?? '')].map((name) => resolve(top, name));
  return { paths: new Set(paths), top };
}

/** Ids that changed notes have now or had at the revision. */
async function idsOf(changes: Changes, revision: string, ask: AskGit, world: World): Promise<Set<string>> {
  const ids = new Set<string>();
  const put = (text: string): void => {
    const id = factsIn(text, '')?.id;
    if (id !== undefined) ids.add(id);
  };
  for (const path of changes.paths) {
    if (!isNoteName(path)) continue;
    put(textAt(path, world) ?? '');
    const before = await ask(['show', `${revision}:${shownAs(path, changes.top)}`], changes.top);
    if (before !== null) put(before);
  }
  return ids;
}

function factsAt(path: string, world: World): NoteFacts | undefined {
  return factsIn(textAt(path, world) ?? '', path);
}

/** Undefined where nothing can be read: a note that was asked for is said to be unreadable when it is checked. */
function textAt(path: string, world: World): string | undefined {
  try {
    return world.files.kind(path) === 'file' ? world.files.read(path) : undefined;
  } catch (error) {
    if (error instanceof FileProblem) return undefined;
    throw error;
  }
}

/**
 * Of some inputs, those that changed since a revision, those that point to a changed note (directly or through
 * another), and all notes of a set whose department file changed.
 */
export async function changedInputs(
  inputs: readonly Input[],
  revision: string,
  world: World,
): Promise<readonly Input[]> {
  const ask: AskGit = world.git ?? (() => Promise.resolve(null));
  const changes = await changesSince(revision, ask, world.folder);
  const folders = [...changes.paths].filter(isDepartmentName).map((path) => dirname(path));
  const isChanged = (path: string): boolean =>
    changes.paths.has(path) || folders.some((folder) => path.startsWith(join(folder, '/')));
  const ids = await idsOf(changes, revision, ask, world);
  const chosen = new Set(inputs.flatMap(({ path }) => (path !== null && isChanged(path) ? [path] : [])));
  const rest =
    ids.size === 0 ? [] : inputs.filter(({ path }) => path !== null && isNoteName(path) && !chosen.has(path));
  let pointing = rest.flatMap(({ path }) => {
    const facts = path === null ? undefined : factsAt(path, world);
    return path === null || facts?.pointsTo === undefined ? [] : [{ path, id: facts.id, to: facts.pointsTo }];
  });
  for (;;) {
    const found = pointing.filter(({ to }) => ids.has(to));
    if (found.length === 0) break;
    for (const { path, id } of found) {
      chosen.add(path);
      if (id !== undefined) ids.add(id);
    }
    pointing = pointing.filter(({ path }) => !chosen.has(path));
  }
  return inputs.filter(({ path }) => path !== null && chosen.has(path));
}
