import type { Path } from '@sideport/schemas';
import type { ComputedNote, ComputedValue } from '../computing/computed.ts';
import { explainComputed, nameOf } from './explain.ts';
import { escaped } from './explanation-text.ts';

export const COMPUTED_CAUTION =
  'Computed values are aids. Check them against the biometry print-out and the lens box; follow local policy and licensed practice. Formula constants are the responsibility of whoever entered them.';

/** Everything that was computed from a note, and from what, as a page in Markdown. */
export function computedPage({ values, notComputed }: ComputedNote): string {
  const groups = new Map<string, ComputedValue[]>();
  for (const value of values) {
    const place = placeOf(value.path);
    groups.set(place, [...(groups.get(place) ?? []), value]);
  }
  return [
    '# What was computed, and from what',
    `> ${escaped(COMPUTED_CAUTION)}`,
    ...(values.length === 0 ? ['Nothing could be computed yet.'] : []),
    ...[...groups].flatMap(([place, group]) => [`## ${escaped(place)}`, ...group.flatMap(valueBlock)]),
    ...(notComputed.length === 0
      ? []
      : ['## Not computed', ...notComputed.map(({ name, because }) => `- ${escaped(`${nameOf(name)}: ${because}`)}`)]),
  ].join('\n\n');
}

function valueBlock(value: ComputedValue): readonly string[] {
  const { says, rests, cautions } = explainComputed(value);
  return [`**${escaped(says)}**`, escaped(rests), ...cautions.map((caution) => `*${escaped(`Caution: ${caution}`)}*`)];
}

function placeOf(path: Path): string {
  if (path.length === 0) return 'the whole note';
  return path.map((step) => (typeof step === 'number' ? `number ${step + 1}` : nameOf(step))).join(', ');
}
