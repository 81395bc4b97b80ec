import type { GroupPlan, ListPlan, Path, RecordKind } from '@sideport/schemas';
import type { ListNode, MapNode, Tree } from '../reading/tree.ts';
import { columnOf, nextWritten, STEP } from '../edits/lines.ts';
import { below, extent, rootSpot, type Spot } from './spots.ts';

/** A section or list that is still open at a line: something can be written there as part of it. */
export interface Level {
  readonly path: Path;
  readonly plan: GroupPlan | ListPlan;
  /** Where its fields begin; for a list, where the dashes stand. */
  readonly column: number;
  /** What stands before a field: blanks, and for the first one of an entry its dash. */
  readonly lead: string;
  /** Whether nothing is written there yet, so that its column can still be chosen. */
  readonly isEmpty: boolean;
  /** The fields it has already, wherever they stand; for a list of values, the values. */
  readonly present: readonly string[];
  /** The last of them above the line. */
  readonly above: string | undefined;
}

/**
 * The levels open at a line that is blank in the tree, innermost first. A level is left out where writing at its
 * column would tear the lines below from what they belong to.
 */
export function levelsAt(text: string, tree: Tree, kind: RecordKind | null, lineStart: number): readonly Level[] {
  const levels: Level[] = [];
  let spot: Spot | undefined = rootSpot(tree, kind);
  let column = 0;
  while (spot !== undefined) {
    const { node, plan } = spot;
    if (plan === undefined || plan.kind === 'value') break;
    // In brackets there are no lines.
    if (node !== null && '[{'.includes(text[node.span.start] ?? '')) break;
    if (node === null) {
      levels.push({ path: spot.path, plan, ...at(column), isEmpty: true, present: [], above: undefined });
      break;
    }
    if (node.kind === 'scalar') break;
    if (node.kind === 'list' && plan.kind === 'list') levels.push(listLevel(text, spot.path, plan, node));
    if (node.kind === 'map') {
      const group = plan.kind === 'list' ? plan.item : plan;
      if (group.kind === 'group') levels.push(groupLevel(text, spot.path, group, node, lineStart));
    }
    spot = lastBefore(spot, lineStart);
    if (spot?.key !== null && spot !== undefined) column = columnOf(text, spot.key.start) + STEP;
  }
  return levels.filter((level) => leavesBelow(text, lineStart, level)).toReversed();
}

/** Whether what is written at a level leaves the lines below with what they belong to. */
function leavesBelow(text: string, lineStart: number, { column, plan }: Level): boolean {
  // Behind the end of the document a second one would begin, and above its start as well.
  if (/^\.{3}[ \t\r]*$/mu.test(text.slice(0, lineStart))) return false;
  const line = nextWritten(text, lineStart);
  if (line === undefined) return true;
  const next = text.slice(line.start, line.end);
  const least = columnOf(text, line.start + (/^\s*/u.exec(next)?.[0].length ?? 0));
  if (column !== least) return column > least;
  if (/^---(?:\s|$)/u.test(next)) return false;
  // A dash goes on with its list, which a field in its column would end.
  return plan.kind === 'list' || !/^\s*-(?:\s|$)/u.test(next);
}

function at(column: number): Pick<Level, 'column' | 'lead'> {
  return { column, lead: ' '.repeat(column) };
}

function lastBefore(spot: Spot, lineStart: number): Spot | undefined {
  return [...below(spot)].findLast((child) => extent(child).start < lineStart);
}

function groupLevel(text: string, path: Path, plan: GroupPlan, node: MapNode, lineStart: number): Level {
  const first = node.entries[0];
  return {
    path,
    plan,
    ...at(first === undefined ? 0 : columnOf(text, first.keySpan.start)),
    isEmpty: false,
    present: node.entries.map((entry) => entry.key),
    above: node.entries.findLast((entry) => entry.keySpan.start < lineStart)?.key,
  };
}

function listLevel(text: string, path: Path, plan: ListPlan, node: ListNode): Level {
  return {
    path,
    plan,
    ...at(columnOf(text, node.span.start)),
    isEmpty: false,
    present: node.items.flatMap((item) => (item?.kind === 'scalar' ? [item.text] : [])),
    above: undefined,
  };
}
