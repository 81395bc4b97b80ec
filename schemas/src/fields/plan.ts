import * as z from 'zod';
import type { Notation } from '../notation/notation.ts';
import { guides } from './field.ts';
import type { Guide } from './guide.ts';

/** A schema as the reader, completion and the documentation walk it. */
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

const made = new WeakMap<z.ZodType, Plan>();

/** Walks a schema made with field.ts into a plan; the same plan each time. */
export function planOf(schema: z.ZodType): Plan {
  const known = made.get(schema);
  if (known !== undefined) return known;
  const plan = makePlan(schema);
  made.set(schema, plan);
  return plan;
}

function makePlan(schema: z.ZodType): Plan {
  if (schema instanceof z.ZodOptional) return planOf(schema.unwrap() as z.ZodType);
  const guide = guides.get(schema);
  if (guide === undefined) throw new Error('A schema without a guide cannot be planned: make it with fields/field.ts');
  if (schema instanceof z.ZodObject) {
    const fields = new Map<string, Plan>();
    for (const [key, field] of Object.entries(schema.shape)) fields.set(key, planOf(field as z.ZodType));
    return { kind: 'group', guide, fields };
  }
  if (schema instanceof z.ZodArray) {
    const item = planOf(schema.element as z.ZodType);
    if (item.kind === 'list') throw new Error('A list of lists has no notation in a note');
    return { kind: 'list', guide, item };
  }
  if (guide.notation === undefined) throw new Error('A value without a notation cannot be read');
  return { kind: 'value', guide, notation: guide.notation };
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
