import type { GroupPlace, Path } from '@sideport/schemas';
import type { CheckContext } from '../check.ts';
import { isWritten } from './written.ts';

/** Which of these fields a section or an entry of a list does not have, neither as a value nor as a word for none. */
export function missingIn<K extends string>(
  group: { readonly $: GroupPlace } & { readonly [key in K]?: unknown },
  keys: readonly (readonly [key: K, name: string])[],
  { reading }: CheckContext,
  path: Path = group.$.path,
): string[] {
  return keys
    .filter(
      ([key]) => group[key] === undefined && group.$.said[key] === undefined && !isWritten(reading, [...path, key]),
    )
    .map(([, name]) => name);
}
