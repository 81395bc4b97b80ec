import {
  fieldsBelow,
  nearest,
  planAt,
  recordPlan,
  type Field,
  type FollowUp,
  type Operation,
  type Plan,
} from '@sideport/schemas';

/** The steps of a field as it is named in an amendment or a department file: `lens.serial`, `incisions[0].at`. */
export function stepsOf(path: string): (string | number)[] {
  return path
    .trim()
    .split(/[.[\]]+/u)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/u.test(step) ? Number(step) : step));
}

/** The records whose fields are named by their path. */
type Kind = 'operation' | 'follow-up';

export function planOfField(path: string, kind: Kind = 'operation'): Plan | undefined {
  return planAt(recordPlan(kind), stepsOf(path));
}

/** The field that a mistyped name probably means. */
export function nearestField(path: string, kind: Kind = 'operation'): string | undefined {
  const names = [...fieldsBelow(recordPlan(kind))].map((field) => field.path.join('.'));
  return nearest(path, names);
}

/** The value at a path of a note; undefined when it is missing or no single value. */
export function fieldIn(note: Operation | FollowUp, path: string): Field<unknown> | undefined {
  let found: unknown = note;
  for (const step of stepsOf(path)) {
    if (typeof found !== 'object' || found === null) return undefined;
    found =
      typeof step === 'number'
        ? (found as { readonly items?: readonly unknown[] }).items?.[step]
        : (found as Record<string, unknown>)[step];
  }
  return isField(found) ? found : undefined;
}

function isField(value: unknown): value is Field<unknown> {
  return typeof value === 'object' && value !== null && 'text' in value && 'span' in value;
}
