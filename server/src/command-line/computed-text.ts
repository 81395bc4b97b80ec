import type { Path } from '@sideport/schemas';
import type { ComputedData, ComputedNote, ComputedValue } from '../note/computing/computed.ts';

const CAUTION =
  'Computed values are aids. Check them against the biometry print-out and the lens box; follow local policy and\n' +
  'licensed practice. Formula constants are the responsibility of whoever entered them.';

/** The computed values of a note to read: each under the field it belongs to, its cautions beside the number. */
export function computedText(file: string, { values, notComputed }: ComputedNote): string {
  const groups = new Map<string, ComputedValue[]>();
  for (const value of values) {
    const place = placeOf(value.path);
    groups.set(place, [...(groups.get(place) ?? []), value]);
  }
  const blocks = [`${file}\n${CAUTION}`];
  for (const [place, group] of groups) blocks.push(`${place}\n${group.map(block).join('\n')}`);
  if (notComputed.length > 0) {
    const lines = notComputed.map(({ name, because }) => `  ${name}: ${because}`);
    blocks.push(`Not computed\n${lines.join('\n')}`);
  }
  return `${blocks.join('\n\n')}\n`;
}

function block({ name, display, inputs, method, source, cautions }: ComputedValue): string {
  const from = Object.entries(inputs).map(([input, value]) => `${input} ${written(value)}`);
  return [
    `  ${name}: ${display}`,
    ...cautions.map((caution) => `    caution  ${caution}`),
    ...(from.length === 0 ? [] : [`    from     ${from.join(', ')}`]),
    `    method   ${method}`,
    `    source   ${source}`,
  ].join('\n');
}

function written(value: ComputedData): string {
  if (value === null) return 'not defined';
  if (typeof value !== 'object') return String(value);
  if (isList(value)) return value.map(written).join(' and ');
  return Object.entries(value)
    .map(([key, part]) => `${key} ${written(part)}`)
    .join(' ');
}

function isList(value: ComputedData): value is readonly ComputedData[] {
  return Array.isArray(value);
}

/** A place as a person says it: nucleus, step 2. */
function placeOf(path: Path): string {
  if (path.length === 0) return 'The whole note';
  return path.map((step) => (typeof step === 'number' ? `number ${step + 1}` : step)).join(', ');
}
