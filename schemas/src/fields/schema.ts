import * as z from 'zod';
import type { Plan } from './plan.ts';
import type { Valued } from './field.ts';

z.config({ jitless: true });

const made = new WeakMap<Plan, z.ZodType>();
const plans = new WeakMap<object, Plan>();

/** The zod schema of what the format declares: it parses plain data whose values are text. The same one each time. */
export function schemaOf(plan: Plan): z.ZodType {
  let schema = made.get(plan);
  if (schema === undefined) {
    schema = makeSchema(plan);
    made.set(plan, schema);
    plans.set(schema, plan);
  }
  return schema;
}

/** What a schema made here was made from. */
export function planOfSchema(schema: object): Plan | undefined {
  return plans.get(schema);
}

function makeSchema(plan: Plan): z.ZodType {
  if (plan.kind === 'list') return z.array(schemaOf(plan.item));
  if (plan.kind === 'group') {
    return z.strictObject(
      Object.fromEntries([...plan.fields].map(([key, field]) => [key, schemaOf(field).optional()])),
    );
  }
  const { notation } = plan;
  return z.string().transform((text, context): Valued<unknown> => {
    const reading = notation.read(text);
    if (reading.ok) return { leaf: true, value: reading.value, text };
    context.issues.push({ code: 'custom', input: text, message: reading.fault.message });
    return z.NEVER;
  });
}
