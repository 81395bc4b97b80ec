import { DEPARTMENT_FILE } from '../note/set/set-layout.ts';

/** Addresses of files are URIs; the core sees only names relative to a set. */

/** The address of what stands in a folder under a name. */
export function inFolder(folder: string, name: string): string {
  return `${folder}/${encodeURIComponent(name)}`;
}

/** The folder that a file or folder stands in, or undefined at the top. */
export function folderOf(uri: string): string | undefined {
  const path = /^[a-z][a-z\d+.-]*:(?:\/\/[^/]*)?/iu.exec(uri)?.[0] ?? '';
  const at = uri.lastIndexOf('/');
  return at < path.length || uri === path ? undefined : uri.slice(0, at);
}

export function nameOf(uri: string): string {
  return decoded(uri.slice(uri.lastIndexOf('/') + 1));
}

export function isDepartment(uri: string): boolean {
  return nameOf(uri) === DEPARTMENT_FILE;
}

/** One spelling for addresses that differ only in what they escape. */
export function decoded(uri: string): string {
  try {
    return decodeURIComponent(uri);
  } catch {
    return uri;
  }
}

export function isWithin(uri: string, folder: string): boolean {
  return decoded(uri).startsWith(`${decoded(folder)}/`);
}

/** The name of a file within a folder, as people read it. */
export function nameWithin(uri: string, folder: string): string {
  return decoded(uri).slice(decoded(folder).length + 1);
}

/** Whether files can stand beside it: a text that was never saved stands nowhere. */
export function hasPlace(uri: string): boolean {
  return !uri.startsWith('untitled:') && folderOf(uri) !== undefined;
}
