import type { GroupPlan, ListPlan, Path, Plan } from '@sideport/schemas';

/** A value to be written at a path. */
export interface Addition {
  readonly path: Path;
  /** The value itself; it gets its quotes where it is written. */
  readonly value: string;
  /** “block” for a text of several lines, “open” for a field whose value is still to be written. */
  readonly as: 'value' | 'identifier' | 'block' | 'open';
  /** Where it comes from, when it is only proposed: a comment beside it asks for confirmation. */
  readonly proposedFrom?: 'dictation' | 'label';
  /** The words of the dictation that it was read from, for that comment. */
  readonly words?: string;
}

/** Additions below one place of the note, in the order in which the format has them. */
export type Branch = {
  readonly value: Addition | undefined;
  /** By key or by position in a list. */
  readonly below: ReadonlyMap<string | number, Branch>;
};

/** Gathers additions into a tree. Of two for one place the first counts. */
export function branchOf(additions: readonly Addition[], plan: Plan | undefined, depth = 0): Branch {
  const value = additions.find(({ path }) => path.length === depth);
  const groups = new Map<string | number, Addition[]>();
  for (const addition of additions) {
    const step = addition.path[depth];
    if (step === undefined) continue;
    groups.set(step, [...(groups.get(step) ?? []), addition]);
  }
  const order = [...groups.keys()].toSorted((a, b) => rank(a, plan) - rank(b, plan));
  const below = new Map(
    order.map((step) => [step, branchOf(groups.get(step) ?? [], childPlan(plan, step), depth + 1)] as const),
  );
  return { value, below };
}

function rank(step: string | number, plan: Plan | undefined): number {
  if (typeof step === 'number') return step;
  const keys = [...(groupOf(plan)?.fields.keys() ?? [])];
  const at = keys.indexOf(step);
  return at < 0 ? keys.length : at;
}

/** The group whose fields stand at a place: of the section, or of the entries of a list. */
export function groupOf(plan: Plan | undefined): GroupPlan | undefined {
  const group: GroupPlan | ListPlan['item'] | ListPlan | undefined = plan?.kind === 'list' ? plan.item : plan;
  return group?.kind === 'group' ? group : undefined;
}

export function childPlan(plan: Plan | undefined, step: string | number): Plan | undefined {
  if (typeof step === 'number') return plan?.kind === 'list' ? plan.item : undefined;
  return groupOf(plan)?.fields.get(step);
}

/** The order of a key among the fields of its group. */
export function orderOf(plan: Plan | undefined, key: string): number {
  return rank(key, plan);
}
