import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import type { TreeNode } from '../reading/tree.ts';
import { below, extent, rootSpot, type Spot } from './spots.ts';

/** One line of the outline, with what it holds. */
export interface OutlineEntry {
  readonly name: string;
  /** The value of a field, or what tells an entry of a list from the others. */
  readonly detail: string;
  readonly kind: 'section' | 'list' | 'entry' | 'field';
  readonly span: Span;
  /** What is shown as chosen: the key. It lies within the span. */
  readonly head: Span;
  readonly children: readonly OutlineEntry[];
}

/** The note as an outline, in the order of the text. */
export function outline(reading: NoteReading): readonly OutlineEntry[] {
  return [...below(rootSpot(reading.tree, reading.kind))].map(entryOf);
}

function entryOf(spot: Spot): OutlineEntry {
  const children = [...below(spot)].filter((child) => child.key !== null || child.node?.kind === 'map').map(entryOf);
  const span = extent(spot);
  const step = spot.path.at(-1);
  return {
    name: typeof step === 'number' ? `${step + 1}` : nameOf(step),
    detail: detailOf(spot.node),
    kind: kindOf(spot),
    span,
    head: spot.key ?? { start: span.start, end: Math.min(span.end, firstLineEnd(spot)) },
    children,
  };
}

/** A colon with nothing before it is shown all the same: editors refuse an empty name. */
function nameOf(key: string | undefined): string {
  return key === undefined || key.trim() === '' ? '(no name)' : key;
}

function kindOf({ node, key }: Spot): OutlineEntry['kind'] {
  if (key === null) return 'entry';
  if (node?.kind === 'map') return 'section';
  return node?.kind === 'list' && node.items.some((item) => item?.kind === 'map') ? 'list' : 'field';
}

const LONGEST = 60;

function detailOf(node: TreeNode | null): string {
  if (node === null) return '';
  if (node.kind === 'scalar') return shortened(node.text.replace(/\s+/gu, ' '));
  if (node.kind === 'list') {
    return shortened(node.items.flatMap((item) => (item?.kind === 'scalar' ? [item.text] : [])).join(', '));
  }
  const [first] = node.entries;
  return first?.value?.kind === 'scalar' ? shortened(first.value.text) : '';
}

function shortened(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}

function firstLineEnd({ node }: Spot): number {
  const first = node?.kind === 'map' ? node.entries[0] : undefined;
  return first?.keySpan.end ?? node?.span.end ?? 0;
}
