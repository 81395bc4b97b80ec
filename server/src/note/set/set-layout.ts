/**
 * What a set is, by names alone, the same for every adapter: the nearest folder at or above a note that holds a
 * department file, with all below it down to the next department file; without any, the notes of one folder.
 */

export const DEPARTMENT_FILE = 'sideport.yaml';

export const NOTE_ENDING = '.opnote.yaml';

export function isNoteName(name: string): boolean {
  return name.endsWith(NOTE_ENDING);
}

const PASSED_OVER = new Set(['node_modules', '.git']);

/** Whether no set reaches into folders of this name: what stands there was put there by programs. */
export function isPassedOver(folder: string): boolean {
  return PASSED_OVER.has(folder);
}
