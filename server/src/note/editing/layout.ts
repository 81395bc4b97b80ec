import type { NoteReading } from '../reading/note-reading.ts';
import type { Edit } from '../remark.ts';
import { columnOf, lineAt, lineBehindMark, STEP } from '../edits/lines.ts';
import { below, rootSpot, type Spot } from './spots.ts';

/** Where the first letter of each line belongs, by the start of the line; lines that continue another are not in it. */
type Columns = ReadonlyMap<number, number>;

/** Edits that put each field in the column of its section and one blank behind colons and dashes. */
export function layoutEdits(reading: NoteReading): readonly Edit[] {
  const { text, tree, kind } = reading;
  const columns = new Map<number, number>();
  const edits: Edit[] = [];
  place(text, rootSpot(tree, kind), 0, columns, edits);
  return [...edits, ...indentation(text, columns, scalarLines(reading))];
}

/** Notes the columns of all that is below a spot. */
function place(text: string, spot: Spot, column: number, columns: Map<number, number>, edits: Edit[]): void {
  if (spot.node === null || spot.node.kind === 'scalar' || '[{'.includes(text[spot.node.span.start] ?? '')) return;
  const children = [...below(spot)];
  // Where an entry does not begin on the line of its dash, its list is moved with its field, as it is.
  if (children.some((child) => child.key === null && blanksBehindDash(text, child) === undefined)) return;
  for (const child of children) {
    const at = child.key?.start ?? child.node?.span.start ?? 0;
    const { start } = lineAt(text, at);
    if (child.key === null) {
      columns.set(start, column);
      const blanks = blanksBehindDash(text, child) ?? 1;
      if (blanks > 1) edits.push({ span: { start: at - blanks, end: at }, text: ' ' });
    } else {
      if (text.slice(lineBehindMark(text, at).start, at).trim() === '') columns.set(start, column);
      edits.push(...behindColon(text, child));
    }
    place(text, child, column + STEP, columns, edits);
  }
}

/** How many blanks stand between a dash and its entry; undefined where the entry is not alone with it on its line. */
function blanksBehindDash(text: string, { node }: Spot): number | undefined {
  const at = node?.span.start ?? 0;
  return /^[ \t]*-([ \t]+)$/u.exec(text.slice(lineBehindMark(text, at).start, at))?.[1]?.length;
}

function behindColon(text: string, { key, node }: Spot): readonly Edit[] {
  if (key === null || node === null) return [];
  const between = text.slice(key.end, node.span.start);
  const match = /^([ \t]*:)([ \t]+)$/u.exec(between);
  return match === null || between === ': ' ? [] : [{ span: { start: key.end, end: node.span.start }, text: ': ' }];
}

/** Starts of the lines that lie within a scalar and belong to it. */
function scalarLines({ text, values, tree }: NoteReading): ReadonlySet<number> {
  const starts = new Set<number>();
  const add = (start: number, end: number) => {
    for (let at = text.indexOf('\n', start); at >= 0 && at < end - 1; at = text.indexOf('\n', at + 1))
      starts.add(at + 1);
  };
  for (const { field } of values) add(field.span.start, field.span.end);
  // Values that were not understood are scalars all the same.
  const waiting = tree.root === null ? [] : [tree.root];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (node.kind === 'scalar') add(node.span.start, node.span.end);
    else if (node.kind === 'map') waiting.push(...node.entries.flatMap(({ value }) => (value === null ? [] : [value])));
    else waiting.push(...node.items.filter((item) => item !== null));
  }
  return starts;
}

function indentation(text: string, columns: Columns, within: ReadonlySet<number>): readonly Edit[] {
  const edits: Edit[] = [];
  let moved = 0;
  for (let start = 0; start <= text.length;) {
    const line = lineAt(text, start);
    const begin = lineBehindMark(text, start).start;
    const written = text.slice(begin, line.end);
    const indent = /^[ \t]*/u.exec(written)?.[0].length ?? 0;
    const column = columns.get(line.start);
    if (column !== undefined) moved = column - indent;
    const target =
      column ??
      indent +
        (isComment(written) && !within.has(line.start) ? commentMove(text, line.end, indent, columns, moved) : moved);
    // A blank line is tidied elsewhere; within a text it is a part of the text.
    if (written.trim() !== '' && target !== indent && target >= 0) {
      edits.push({ span: { start: begin, end: begin + indent }, text: ' '.repeat(target) });
    }
    const next = text.indexOf('\n', start);
    if (next < 0) break;
    start = next + 1;
  }
  return edits;
}

function isComment(line: string): boolean {
  return line.trimStart().startsWith('#');
}

/** A comment moves with the field below it when it stood in its column, else with what is above it. */
function commentMove(text: string, from: number, indent: number, columns: Columns, moved: number): number {
  for (let at = text.indexOf('\n', from); at >= 0; at = text.indexOf('\n', at + 1)) {
    const column = columns.get(at + 1);
    if (column === undefined) continue;
    const line = lineAt(text, at + 1);
    const first = /\S/u.exec(text.slice(line.start, line.end));
    const firstColumn = first === null ? 0 : columnOf(text, line.start + first.index);
    return firstColumn === indent ? column - firstColumn : moved;
  }
  return moved;
}
