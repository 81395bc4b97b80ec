import type { Edit } from '../remark.ts';
import { columnOf, lineAt } from '../edits/lines.ts';
import { below, extent, type Spot } from './spots.ts';

/**
 * The edit that takes a field or an entry of a list out of a note again, with what is left empty by that. Comments
 * behind it go with it; all else stays.
 */
export function removeSpot(text: string, spot: Spot): Edit {
  const { parent } = spot;
  const siblings = parent === null ? [] : [...below(parent)];
  // A section or an entry with nothing in it says nothing.
  if (parent !== null && parent.parent !== null && siblings.length === 1) return removeSpot(text, parent);
  const inLine = parent?.node !== null && '[{'.includes(text[parent?.node.span.start ?? 0] ?? ' ');
  const at = siblings.findIndex(({ path }) => path.at(-1) === spot.path.at(-1));
  if (inLine) return withoutComma(spot, siblings[at - 1], siblings[at + 1]);
  return withoutLines(text, spot, siblings[at + 1]);
}

function withoutComma(spot: Spot, before: Spot | undefined, after: Spot | undefined): Edit {
  const own = extent(spot);
  if (before !== undefined) return { span: { start: extent(before).end, end: own.end }, text: '' };
  return { span: { start: own.start, end: after === undefined ? own.end : extent(after).start }, text: '' };
}

function withoutLines(text: string, spot: Spot, after: Spot | undefined): Edit {
  const { start, end } = extent(spot);
  const line = lineAt(text, start);
  const first = text.slice(line.start, start);
  const last = lineAt(text, text.slice(0, end).trimEnd().length);
  const next = text.indexOf('\n', last.end);
  // The first field of an entry shares the line of its dash with it: the next field takes its place.
  const behindDash = spot.key !== null && /-[ \t]+$/u.test(first);
  if (behindDash && after !== undefined && columnOf(text, extent(after).start) === columnOf(text, start)) {
    // What a line of its own says in between stays.
    const between = text.slice(last.end, extent(after).start).includes('#');
    return { span: { start, end: between ? last.end : extent(after).start }, text: '' };
  }
  return { span: { start: line.start, end: next < 0 ? text.length : next + 1 }, text: '' };
}
