import type { Figure, Group } from './figure.ts';
import { groupBy } from './group-by.ts';

/** A figure of a group, and those of the same name into which one more property divides it. */
export interface Sum {
  readonly total: Figure;
  readonly parts: readonly Figure[];
}

/** Every sum among figures, so that what is left of a total can be told: surgeons and periods of the whole set, and so on. */
export function sumsOf(figures: readonly Figure[]): readonly Sum[] {
  const totals = new Map(figures.map((figure) => [keyOf(figure.name, figure.group), figure]));
  const divided = figures.flatMap((part) =>
    Object.keys(part.group).map((property) => {
      const { [property]: _divided, ...rest } = part.group;
      return { part, property, total: totals.get(keyOf(part.name, rest)) };
    }),
  );
  return groupBy(divided, ({ part, property, total }) =>
    total === undefined ? '' : JSON.stringify([property, keyOf(part.name, total.group)]),
  ).flatMap(([, members]) => {
    const total = members[0]?.total;
    return total === undefined ? [] : [{ total, parts: members.map(({ part }) => part) }];
  });
}

const keyOf = (name: string, group: Group): string =>
  JSON.stringify([name, Object.entries(group).toSorted(([a], [b]) => (a < b ? -1 : 1))]);
