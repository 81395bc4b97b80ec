import type { Operation } from '@sideport/schemas';

type Sutures = NonNullable<NonNullable<Operation['closure']>['sutures']>;

/** Every place of a note that records sutures: the wounds, and the closure as a whole. */
export function suturesOf({ incisions, closure }: Operation): Sutures[] {
  return [...(incisions?.items.map(({ sutures }) => sutures) ?? []), closure?.sutures].filter(
    (sutures) => sutures !== undefined,
  );
}

/** Whether sutures that do not dissolve were placed. */
export function isPermanent({ count, material }: Sutures): boolean {
  return count?.value !== 0 && material?.value !== 'polyglactin';
}
