import type { Operation } from '@sideport/schemas';

type Lens = NonNullable<Operation['lens']>;
type Planned = NonNullable<NonNullable<Operation['plan']>['lens']>;

/** The lens implanted, unless the eye was left without one. */
export function implantedLens({ lens }: Operation): Lens | undefined {
  return lens?.placed?.value === 'none' ? undefined : lens;
}

export function plannedLens({ plan }: Operation): Planned | undefined {
  return plan?.lens;
}

/** Two identifiers of a lens that mean the same although blanks or capitals differ. */
export function sameName(a: string, b: string): boolean {
  return fold(a) === fold(b);
}

function fold(name: string): string {
  return name
    .toLowerCase()
    .replace(/[\s_]+/gu, ' ')
    .trim();
}

/** The lens as verified differs from the lens as implanted: that is said once, before any other comparison. */
export function differsFromVerified(note: Operation): boolean {
  const lens = implantedLens(note);
  const verified = note.safety?.['lens-verified'];
  return (
    differs(verified?.model, lens?.model, (a, b) => sameName(a, b)) || differs(verified?.power, lens?.power, samePower)
  );
}

export function samePower(a: { readonly amount: number }, b: { readonly amount: number }): boolean {
  return a.amount === b.amount;
}

/** Whether both are recorded and not the same. */
export function differs<V>(
  a: { readonly value: V } | undefined,
  b: { readonly value: V } | undefined,
  same: (a: V, b: V) => boolean,
): boolean {
  return a !== undefined && b !== undefined && !same(a.value, b.value);
}

/** Maker, model or kind of the implanted lens differ from the plan. */
export function isOtherLens(note: Operation): boolean {
  const [lens, planned] = [implantedLens(note), plannedLens(note)];
  return (
    differs(planned?.maker, lens?.maker, sameName) ||
    differs(planned?.model, lens?.model, sameName) ||
    differs(planned?.kind, lens?.kind, (a, b) => a === b)
  );
}

/**
 * Model or power are told in two ways without a reason: that is remarked, and the lens is not held against lists and
 * rules of thumb as well.
 */
export function lensInDoubt(note: Operation): boolean {
  if (differsFromVerified(note)) return true;
  const [lens, planned] = [implantedLens(note), plannedLens(note)];
  if (lens?.['changed-because'] !== undefined) return false;
  return isOtherLens(note) || differs(planned?.power, lens?.power, samePower);
}
