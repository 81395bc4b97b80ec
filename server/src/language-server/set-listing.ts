import { DEPARTMENT_FILE, isNoteName, isPassedOver } from '../note/set/set-layout.ts';
import { inFolder } from './addresses.ts';
import type { SetFiles } from './runtime.ts';

/** The notes of a set as its folders list them. */
export interface SetListing {
  readonly notes: readonly string[];
  /** Folders in which sets of their own begin. */
  readonly inner: readonly string[];
}

/** Lists the notes in a folder, with `deep` also below it. Links are not followed: they could lead back to above. */
export async function listSet(files: SetFiles, root: string, deep: boolean): Promise<SetListing> {
  const notes: string[] = [];
  const inner: string[] = [];
  const look = async (folder: string): Promise<void> => {
    const entries = await files.list(folder);
    if (folder !== root && entries.some(({ name, kind }) => name === DEPARTMENT_FILE && kind !== 'folder')) {
      inner.push(folder);
      return;
    }
    for (const { name, kind } of entries) {
      if (kind === 'file' && isNoteName(name)) notes.push(inFolder(folder, name));
    }
    if (!deep) return;
    const folders = entries.filter(({ name, kind }) => kind === 'folder' && !isPassedOver(name));
    await Promise.all(folders.map(({ name }) => look(inFolder(folder, name))));
  };
  await look(root);
  return { notes, inner };
}
