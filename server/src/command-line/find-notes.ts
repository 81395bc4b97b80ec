import { join, resolve, sep } from 'node:path';
import { isNoteName, isPassedOver } from '../note/set/set-layout.ts';
import { isDepartmentName, shownAs } from './file-names.ts';
import type { Files, World } from './world.ts';

/** One file to read, or standard input. */
export interface Input {
  /** As reports name it; “-” for standard input. */
  readonly file: string;
  /** null for standard input. */
  readonly path: string | null;
}

export interface Found {
  readonly inputs: readonly Input[];
  /** What was asked for and is not there, each a sentence. */
  readonly missing: readonly string[];
}

/**
 * Finds the notes and department files that paths stand for: files as they are, folders with all below them,
 * patterns such as 2031/**, and - for standard input. Each file once, folders in the order of their names.
 */
export async function findNotes(paths: readonly string[], { files, folder }: World): Promise<Found> {
  const found = new Map<string | null, Input>();
  const missing: string[] = [];
  for (const path of paths) {
    const matched = path === '-' ? [null] : await filesFor(path, files, folder);
    if (typeof matched === 'string') missing.push(matched);
    else for (const file of matched) found.set(file, { file: file === null ? '-' : shownAs(file, folder), path: file });
  }
  return { inputs: [...found.values()], missing };
}

async function filesFor(path: string, files: Files, folder: string): Promise<readonly string[] | string> {
  const absolute = resolve(folder, path);
  const kind = files.kind(absolute);
  if (kind === 'file') return [absolute];
  if (kind === null && !/[*?[{(]/u.test(path)) return `${path}: there is no such file or folder.`;
  const notes = kind === 'folder' ? notesBelow(absolute, files) : await matching(path, files, folder);
  return notes.length > 0 ? notes : `${path}: no note is there. The name of a note ends in .opnote.yaml.`;
}

/** Every note and department file at or below a folder. */
export function notesBelow(folder: string, files: Files): string[] {
  const prefix = join(folder, sep);
  return files
    .list(folder)
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap(({ name, kind }) => {
      const path = prefix + name;
      if (kind === 'folder') return isPassedOver(name) ? [] : notesBelow(path, files);
      return isNoteName(name) || isDepartmentName(name) ? [path] : [];
    });
}

async function matching(pattern: string, files: Files, folder: string): Promise<string[]> {
  const { default: picomatch } = await import('picomatch');
  const absolute = resolve(folder, pattern).split(sep).join('/');
  const { base } = picomatch.scan(absolute);
  if (files.kind(base) !== 'folder') return [];
  const matches = picomatch(absolute);
  return notesBelow(base, files).filter((file) => matches(file.split(sep).join('/')));
}
