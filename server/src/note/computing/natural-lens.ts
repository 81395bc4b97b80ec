import type { Operation } from '@sideport/schemas';

/** Operations that find no natural lens, or leave it where it is. */
const LEAVING_THE_LENS: readonly string[] = [
  'lens exchange',
  'secondary lens',
  'lens repositioning',
  'peripheral iridotomy',
];
const WITHOUT_LENS = ['aphakia', 'pseudophakia'] as const;

/** Whether the natural lens is removed in this operation, as far as the procedure says. */
export function removesLens({ procedure }: Operation): boolean {
  return procedure === undefined || !LEAVING_THE_LENS.includes(procedure.value);
}

/** The diagnosis of an eye that has lost its natural lens before this operation: aphakia or pseudophakia. */
export function withoutNaturalLens({ diagnosis }: Operation) {
  return diagnosis?.cataract?.items.find(({ value }) => WITHOUT_LENS.some((word) => word === value));
}

/** Why what holds for the removal of a natural lens does not hold for this operation; undefined when it does. */
export function whyNoExtraction(note: Operation): string | undefined {
  const lost = withoutNaturalLens(note);
  if (lost !== undefined) return `the natural lens is not removed in this operation: the diagnosis is ${lost.value}`;
  return removesLens(note) ? undefined : `a ${note.procedure?.value ?? 'procedure'} does not remove the natural lens`;
}
