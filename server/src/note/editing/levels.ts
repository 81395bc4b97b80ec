import type { GroupPlan, ListPlan, Path, RecordKind } from '@sideport/schemas';
import type { ListNode, MapNode, Tree } from '../reading/tree.ts';
import { columnOf, lineAt, nextWritten, STEP } from '../edits/lines.ts';
import { below, extent, rootSpot, type Spot } from './spots.ts';

/** A section or list that is still open at a line: something can be written there as part of it. */
export interface Level {
  readonly path: Path;
  readonly plan: GroupPlan | ListPlan;
  /** Where its fields begin; for a list, where the dashes stand. */
  readonly column: number;
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
      levels.push({ path: spot.path, plan, column, present: [], above: undefined });
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
  const next = nextWritten(text, lineStart);
  const least = next === undefined ? 0 : (/^\s*/u.exec(text.slice(next.start, next.end))?.[0].length ?? 0);
  return levels.filter((level) => level.column >= least).toReversed();
}

function lastBefore(spot: Spot, lineStart: number): Spot | undefined {
  return [...below(spot)].findLast((child) => extent(child).start < lineStart);
}

function groupLevel(text: string, path: Path, plan: GroupPlan, node: MapNode, lineStart: number): Level {
  const first = node.entries[0];
  return {
    path,
    plan,
    // A byte order mark stands before the first field of a note and takes no column.
    column: first === undefined || path.length === 0 ? 0 : columnOf(text, first.keySpan.start),
    present: node.entries.map((entry) => entry.key),
    above: node.entries.findLast((entry) => entry.keySpan.start < lineStart)?.key,
  };
}

function listLevel(text: string, path: Path, plan: ListPlan, node: ListNode): Level {
  const line = lineAt(text, node.span.start);
  return {
    path,
    plan,
    column: /^\s*/u.exec(text.slice(line.start, line.end))?.[0].length ?? 0,
    present: node.items.flatMap((item) => (item?.kind === 'scalar' ? [item.text] : [])),
    above: undefined,
  };
}
