import { basename, relative, sep } from 'node:path';
import { DEPARTMENT_FILE } from '../note/set/set-layout.ts';

/** How files are named in reports: relative to where the command runs, with forward slashes on every system. */
export function shownAs(file: string, folder: string): string {
  // Most files lie below the folder; asking for the relative path of thousands takes longer than reading them.
  const below = file.startsWith(folder + sep) ? file.slice(folder.length + 1) : relative(folder, file);
  return sep === '/' ? below : below.split(sep).join('/');
}

export function isDepartmentName(file: string): boolean {
  return basename(file) === DEPARTMENT_FILE;
}
