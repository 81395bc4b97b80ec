import { recordPlan, type ListPlan, type Path, type Plan, type RecordKind, type Span } from '@sideport/schemas';
import type { Tree, TreeNode } from '../reading/tree.ts';

/** One place of the note as written, known to the format or not: a field, a section, or an entry of a list. */
export interface Spot {
  readonly path: Path;
  /** null for an entry of a list, and for the note itself. */
  readonly key: Span | null;
  readonly node: TreeNode | null;
  /** undefined where the format has no such field. */
  readonly plan: Plan | undefined;
  readonly parent: Spot | null;
}

/** The record kind of a text whose head is not yet written: an operation. */
export function planFor(kind: RecordKind | null): Plan {
  return recordPlan(kind ?? 'operation');
}

/** The note itself. */
export function rootSpot(tree: Tree, kind: RecordKind | null): Spot {
  return { path: [], key: null, node: tree.root, plan: planFor(kind), parent: null };
}

/** What is written directly below a spot, in the order of the text. Empty entries of a list have no place. */
export function* below(spot: Spot): Generator<Spot> {
  const { node, plan } = spot;
  if (node?.kind === 'map') {
    // One section where a list of sections is due counts as a list of one.
    const group = plan?.kind === 'list' ? plan.item : plan;
    for (const entry of node.entries) {
      yield {
        path: [...spot.path, entry.key],
        key: entry.keySpan,
        node: entry.value,
        plan: group?.kind === 'group' ? group.fields.get(entry.key) : undefined,
        parent: spot,
      };
    }
  } else if (node?.kind === 'list') {
    const item = plan?.kind === 'list' ? itemOf(plan) : undefined;
    for (const [index, entry] of node.items.entries()) {
      if (entry !== null) yield { path: [...spot.path, index], key: null, node: entry, plan: item, parent: spot };
    }
  }
}

function itemOf(plan: ListPlan): Plan {
  return plan.item;
}

/** Every spot of the note, sections before what they hold. */
export function* allSpots(tree: Tree, kind: RecordKind | null): Generator<Spot> {
  const waiting: Spot[] = [rootSpot(tree, kind)];
  for (let spot = waiting.pop(); spot !== undefined; spot = waiting.pop()) {
    if (spot.parent !== null) yield spot;
    waiting.push(...[...below(spot)].toReversed());
  }
}

/** All that a spot covers: its key and its value. */
export function extent(spot: Spot): Span {
  const { key, node } = spot;
  return { start: key?.start ?? node?.span.start ?? 0, end: node?.span.end ?? key?.end ?? 0 };
}

export interface Aim {
  readonly spot: Spot;
  readonly on: 'key' | 'value';
}

/** The innermost spot whose key or value holds an offset (its end included), or undefined on white space and comments. */
export function spotAt(tree: Tree, kind: RecordKind | null, offset: number): Aim | undefined {
  let at = rootSpot(tree, kind);
  for (;;) {
    const inside: Spot | undefined = [...below(at)].find((spot) => {
      const { start, end } = extent(spot);
      return start <= offset && offset <= end;
    });
    if (inside === undefined) return undefined;
    if (inside.key !== null && offset <= inside.key.end) return { spot: inside, on: 'key' };
    if (inside.node?.kind === 'scalar' && offset >= inside.node.span.start) return { spot: inside, on: 'value' };
    at = inside;
  }
}

/** The spot at a path, or the nearest one above it. */
export function spotOf(tree: Tree, kind: RecordKind | null, path: Path): Spot {
  let at = rootSpot(tree, kind);
  for (const step of path) {
    const next = [...below(at)].find((spot) => spot.path.at(-1) === step);
    if (next === undefined) return at;
    at = next;
  }
  return at;
}

/** The path at an offset: of the field it stands in or, on a blank line, of the section that the line belongs to. */
export function pathAt(tree: Tree, kind: RecordKind | null, offset: number): Path {
  const aim = spotAt(tree, kind, offset);
  if (aim !== undefined) return aim.spot.path;
  let at = rootSpot(tree, kind);
  for (;;) {
    const before = [...below(at)].findLast((spot) => extent(spot).start <= offset);
    if (before === undefined || (extent(before).end < offset && before.node?.kind === 'scalar')) return at.path;
    at = before;
  }
}
