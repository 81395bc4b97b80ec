import type { Notation } from '../notation/notation.ts';
import type { Guide } from './guide.ts';

/** What the format declares, as the reader, completion and the documentation walk it. */
export type Plan = ValuePlan | GroupPlan | ListPlan;

export interface ValuePlan {
  readonly kind: 'value';
  readonly guide: Guide;
  readonly notation: Notation<unknown>;
}

export interface GroupPlan {
  readonly kind: 'group';
  readonly guide: Guide;
  /** In the order of declaration, which is the order of an operation. */
  readonly fields: ReadonlyMap<string, Plan>;
}

export interface ListPlan {
  readonly kind: 'list';
  readonly guide: Guide;
  readonly item: ValuePlan | GroupPlan;
}

/** The plan at a path, list positions skipped, or undefined where the format has no such field. */
export function planAt(root: Plan, path: readonly (string | number)[]): Plan | undefined {
  let plan: Plan | undefined = root;
  for (const step of path) {
    if (plan?.kind === 'list') plan = typeof step === 'number' ? plan.item : planIn(plan.item, step);
    else plan = typeof step === 'string' && plan !== undefined ? planIn(plan, step) : undefined;
    if (plan === undefined) return undefined;
  }
  return plan;
}

function planIn(plan: Plan, key: string): Plan | undefined {
  return plan.kind === 'group' ? plan.fields.get(key) : undefined;
}

/** Every field below a plan with its path; list positions are left out of the paths. */
export function* fieldsBelow(
  plan: Plan,
  path: readonly string[] = [],
): Generator<{ readonly path: readonly string[]; readonly plan: Plan }> {
  if (path.length > 0) yield { path, plan };
  const group = plan.kind === 'list' ? plan.item : plan;
  if (group.kind !== 'group') return;
  for (const [key, field] of group.fields) yield* fieldsBelow(field, [...path, key]);
}
