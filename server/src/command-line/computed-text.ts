import type { Path } from '@sideport/schemas';
import type { ComputedNote, ComputedValue } from '../note/computing/computed.ts';
import { inputsInWords } from '../note/computing/inputs-in-words.ts';

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

function block(value: ComputedValue): string {
  const { name, display, method, source, cautions } = value;
  const from = inputsInWords(value);
  return [
    `  ${name}: ${display}`,
    ...cautions.map((caution) => `    caution  ${caution}`),
    ...(from.length === 0 ? [] : [`    from     ${from.join(', ')}`]),
    `    method   ${method}`,
    `    source   ${source}`,
  ].join('\n');
}

/** A place as a person says it: nucleus, step 2. */
function placeOf(path: Path): string {
  if (path.length === 0) return 'The whole note';
  return path.map((step) => (typeof step === 'number' ? `number ${step + 1}` : step)).join(', ');
}
