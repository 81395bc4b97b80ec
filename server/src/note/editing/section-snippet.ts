import type { GroupPlan, ListPlan, Path, Plan } from '@sideport/schemas';
import { STEP } from '../edits/lines.ts';
import { usualFields } from './usual-fields.ts';

/**
 * A whole section with a place to write at each of its usual fields, in the protocol's snippet grammar. Nothing is
 * filled in: a place passed over stays empty and is remarked on.
 */
export function wholeSection(key: string, path: Path, plan: GroupPlan | ListPlan, column: number): string {
  const places = { next: 1 };
  return `${key}:${body(path, plan, column, places)}$0`;
}

interface Places {
  next: number;
}

function body(path: Path, plan: Plan, column: number, places: Places): string {
  if (plan.kind === 'value') return ` ${place(plan.notation.unit, places)}`;
  const inner = column + STEP;
  if (plan.kind === 'group')
    return fields(path, plan, inner, places)
      .map((line) => `\n${' '.repeat(inner)}${line}`)
      .join('');
  // A list of words is written in brackets, as people write it.
  if (plan.item.kind === 'value') return ` [\${${places.next++}}]`;
  const [first = '', ...others] = fields(path, plan.item, inner + STEP, places);
  const indent = ' '.repeat(inner);
  return [`\n${indent}- ${first}`, ...others.map((line) => `\n${indent}  ${line}`)].join('');
}

function fields(path: Path, plan: GroupPlan, column: number, places: Places): readonly string[] {
  return usualFields(path, plan).map((key) => {
    const field = plan.fields.get(key);
    if (field === undefined) return `${key}: `;
    // What may be said not to exist in one word is begun as that one place.
    if (field.kind !== 'value' && field.guide.says !== undefined) return `${key}: \${${places.next++}}`;
    return `${key}:${body([...path, key], field, column, places)}`;
  });
}

/** Units are written out, so that only the number is typed; “%” alone, where none is, could not be read. */
function place(unit: string | undefined, places: Places): string {
  const stop = `\${${places.next++}}`;
  if (unit === undefined || unit === '' || unit === '%') return stop;
  return unit === '°' ? `${stop}°` : `${stop} ${unit}`;
}
