import { planAt, recordPlan, type FollowUp, type GroupPlace, type Operation, type Plan } from '@sideport/schemas';
import { stepsOf } from '../checks/support/field-path.ts';
import { term } from './as-typed.ts';
import { join } from './english.ts';

/**
 * A field named by its path, in words: `Lens, lot`; `Complication 1 (iris prolapse), extent`. An entry of a list is
 * named by its first field, where the note is at hand. A path that the format does not know stays as it is.
 */
export function fieldInWords(path: string | undefined, note: Operation | FollowUp | undefined): string {
  if (path === undefined) return 'A field that is not named';
  const steps = stepsOf(path);
  const root = recordPlan(planAt(recordPlan('operation'), steps) === undefined ? 'follow-up' : 'operation');
  const plans = steps.map((_, index) => planAt(root, steps.slice(0, index + 1)));
  if (plans.length === 0 || plans.includes(undefined)) return path;
  const parts = steps.map((step, index) => {
    if (typeof step === 'number') {
      const name = nameOf(itemAt(note, steps.slice(0, index + 1)), plans[index]);
      return `${label(plans[index])} ${step + 1}${name === undefined ? '' : ` (${name})`}`;
    }
    // The list is told by its entry.
    return typeof steps[index + 1] === 'number' ? undefined : label(plans[index]);
  });
  const [first = path, ...others] = parts.filter((part) => part !== undefined);
  return join([first, ...others.map((part) => part.charAt(0).toLowerCase() + part.slice(1))], ', ');
}

const label = (plan: Plan | undefined): string => plan?.guide.label ?? '';

/** The entry at a path; found by its own path, because entries that could not be read are missing from a list. */
function itemAt(note: Operation | FollowUp | undefined, steps: readonly (string | number)[]): unknown {
  return steps.reduce<unknown>((found, step) => {
    if (typeof step === 'string') return part(found, step);
    const items = part(found, 'items');
    if (!Array.isArray(items)) return undefined;
    return items.find((item: unknown) => (part(item, '$') as GroupPlace | undefined)?.path.at(-1) === step);
  }, note);
}

function part(of: unknown, key: string): unknown {
  return typeof of === 'object' && of !== null ? Reflect.get(of, key) : undefined;
}

/** The first field of an entry: what went wrong, which incision, which drug. */
function nameOf(item: unknown, plan: Plan | undefined): string | undefined {
  if (plan?.kind !== 'group') return undefined;
  const key = [...plan.fields.keys()].find((name) => part(item, name) !== undefined);
  const field = key === undefined ? undefined : part(item, key);
  const [text, value] = [part(field, 'text'), part(field, 'value')];
  if (typeof text !== 'string') return undefined;
  return typeof value === 'string' ? term({ text, value }) : text;
}
