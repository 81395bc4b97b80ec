import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** A sample of the repository, by its path within samples/. */
export function sample(path: string): string {
  return readFileSync(`${root}samples/${path}`, 'utf8');
}

/** Where the pictures for the documentation are kept. */
export function picturePath(name: string): string {
  return `${root}docs/pictures/${name}.png`;
}

/** Where a window is shown whose test failed; not kept. */
export function failurePath(name: string): string {
  return `${root}tests/editor/out/${name}.png`;
}
