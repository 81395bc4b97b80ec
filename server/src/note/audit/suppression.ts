import type { Figure, Group } from './figure.ts';
import { groupBy } from './group-by.ts';

/** Below this many events or eyes a group is not shown: common practice in the UK, no source seen. */
export const SMALL_CELL = 5;

function isSmall(count: number | null, threshold: number): boolean {
  return count !== null && count > 0 && count < threshold;
}

/** A figure that could point at a person because few cases are behind it. */
function mustHide(figure: Figure, threshold: number): boolean {
  const grouped = Object.keys(figure.group).length > 0;
  if (figure.sensitive && isSmall(figure.count, threshold)) return true;
  return grouped && figure.value !== null && figure.name !== 'operations' && isSmall(figure.n, threshold);
}

function hide(figure: Figure): Figure {
  return { ...figure, value: null, count: null, interval: null, suppressed: true };
}

/** Figures that add up to one another: same name, broken down by the same properties. */
function siblingsKey(figure: Figure): string {
  return JSON.stringify([figure.name, Object.keys(figure.group).toSorted()]);
}

/**
 * Hides small cells. Where exactly one of the cells that add up to a shown total would be hidden, the smallest of
 * the others (nought counts) is hidden too, so that the hidden one cannot be found by subtraction. Below 2, nothing
 * is hidden.
 */
export function suppressSmallCells(figures: readonly Figure[], threshold: number): readonly Figure[] {
  if (threshold < 2) return figures;
  const hidden = new Set(figures.filter((figure) => mustHide(figure, threshold)));
  for (const [, siblings] of groupBy(figures, siblingsKey)) {
    const open = siblings.filter((figure) => !hidden.has(figure) && figure.count !== null && figure.sensitive);
    const alone = siblings.filter((figure) => hidden.has(figure)).length === 1;
    if (!alone || siblings.length < 2) continue;
    const [smallest] = open.toSorted((a, b) => (a.count ?? 0) - (b.count ?? 0));
    if (smallest !== undefined) hidden.add(smallest);
  }
  return figures.map((figure) => (hidden.has(figure) ? hide(figure) : figure));
}

/** Whether the group's figure of this name was hidden: what depends on the same count is hidden with it. */
export function isHidden(figures: readonly Figure[], name: string, group: Group): boolean {
  const wanted = JSON.stringify(group);
  return figures.some((figure) => figure.suppressed && figure.name === name && JSON.stringify(figure.group) === wanted);
}
