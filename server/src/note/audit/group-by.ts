import { compareText } from '../reports/report-input.ts';

/** Items by key, keys in code-unit order. */
export function groupBy<T>(
  items: readonly T[],
  keyOf: (item: T) => string,
): readonly (readonly [string, readonly T[]])[] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return [...groups].toSorted(([a], [b]) => compareText(a, b));
}
