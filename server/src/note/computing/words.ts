import type { Field, GroupPlace, ReadList } from '@sideport/schemas';

/** Words of a list; an empty list where it says “none”, undefined where nothing is recorded. */
export function wordsOf<W extends string>(
  list: ReadList<Field<W>> | undefined,
  key: string,
  group: GroupPlace | undefined,
): readonly W[] | undefined {
  if (list !== undefined && list.items.length > 0) return list.items.map((item) => item.value);
  return group?.said[key]?.word === 'none' ? [] : undefined;
}

/** Whether a list has one of some words; undefined where the list is not recorded. */
export function hasOne<W extends string>(
  words: readonly W[] | undefined,
  ...wanted: readonly W[]
): boolean | undefined {
  return words?.some((word) => wanted.includes(word));
}

/** Yes if either says so, no if at least one is recorded and none says so. */
export function either(...answers: readonly (boolean | undefined)[]): boolean | undefined {
  if (answers.includes(true)) return true;
  return answers.includes(false) ? false : undefined;
}
