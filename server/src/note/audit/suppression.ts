import { sumsOf, type Sum } from './sums.ts';
import type { Figure, Group } from './figure.ts';

/** Below this many events or eyes a group is not shown: common practice in the UK, no source seen. */
export const SMALL_CELL = 5;

/** Figures that rest on the same count, so that what is hidden in one could be read off another. */
const SAME_COUNT: readonly (readonly string[])[] = [
  ['posterior-capsule-rupture', 'rupture-observed-expected', 'rupture-observed-expected-own'],
];

/** How many operations the whole set has is always said: it describes the report. */
const isSizeOfSet = ({ name, group }: Figure): boolean => name === 'operations' && Object.keys(group).length === 0;

const isSmall = (count: number | null, threshold: number): boolean => count !== null && count > 0 && count < threshold;

/** A figure that could point at a person because few cases are behind it. */
function isSmallCell(figure: Figure, threshold: number): boolean {
  if (isSizeOfSet(figure)) return false;
  return (
    (figure.sensitive && isSmall(figure.count, threshold)) || (figure.value !== null && isSmall(figure.n, threshold))
  );
}

const hide = (figure: Figure): Figure => ({
  ...figure,
  value: null,
  count: null,
  n: null,
  missing: null,
  interval: null,
  suppressed: true,
});

/**
 * Hides small cells, and as many more as keep them from being found by subtraction: of the cells that add up to a shown
 * total never a single one is hidden, nor several that together are small themselves. Where the cells do not suffice,
 * the total is hidden. Below 2, nothing is hidden.
 */
export function suppressSmallCells(figures: readonly Figure[], threshold: number): readonly Figure[] {
  if (threshold < 2) return figures;
  const hidden = new Set(figures.filter((figure) => isSmallCell(figure, threshold)));
  const smallGroups = figures.filter((figure) => isSizeOfSet(figure) && isSmall(figure.n, threshold));
  const sums = sumsOf(figures);
  let before: number;
  do {
    before = hidden.size;
    const groups = [...smallGroups, ...[...hidden].filter(({ name }) => name === 'operations')];
    for (const figure of figures) {
      if (groups.some(({ group }) => isWithin(figure.group, group)) && !isSizeOfSet(figure)) hidden.add(figure);
    }
    for (const sum of sums) protect(sum, hidden, threshold);
    for (const names of SAME_COUNT) hideTogether(figures, names, hidden);
  } while (hidden.size > before);
  return figures.map((figure) => (hidden.has(figure) ? hide(figure) : figure));
}

/** Hides what is needed for the hidden parts of a sum to stay unknown. */
function protect({ total, parts }: Sum, hidden: Set<Figure>, threshold: number): void {
  const within = (): readonly Figure[] => parts.filter((part) => hidden.has(part));
  const open = (): readonly Figure[] =>
    parts.filter((part) => !hidden.has(part)).toSorted((a, b) => sizeOf(a) - sizeOf(b));
  if (hidden.has(total)) {
    // Parts that are all shown would add up to the hidden total.
    const [smallest] = within().length === 0 ? open() : [];
    if (smallest !== undefined) hidden.add(smallest);
    return;
  }
  if (within().length === 0) return;
  while (!isSafe(within(), threshold)) {
    const left = open();
    const next = left.find((part) => isSafe([...within(), part], threshold)) ?? left.at(-1);
    if (next !== undefined) hidden.add(next);
    else {
      if (!isSizeOfSet(total)) hidden.add(total);
      return;
    }
  }
}

/** Whether hidden parts of a shown total tell nothing small, neither one by one nor together. */
function isSafe(parts: readonly Figure[], threshold: number): boolean {
  const isEnough = (valueOf: (part: Figure) => number | null): boolean => {
    const sum = parts.reduce((all, part) => all + (valueOf(part) ?? 0), 0);
    return sum === 0 || sum >= threshold;
  };
  return (
    parts.length > 1 &&
    isEnough(({ n }) => n) &&
    (!parts.some(({ sensitive }) => sensitive) || isEnough(({ count }) => count))
  );
}

const sizeOf = ({ sensitive, count, n }: Figure): number => (sensitive ? count : n) ?? 0;

function hideTogether(figures: readonly Figure[], names: readonly string[], hidden: Set<Figure>): void {
  const same = figures.filter(({ name }) => names.includes(name));
  const groups = new Set(same.filter((figure) => hidden.has(figure)).map(({ group }) => JSON.stringify(group)));
  for (const figure of same) if (groups.has(JSON.stringify(figure.group))) hidden.add(figure);
}

const isWithin = (group: Group, larger: Group): boolean =>
  Object.entries(larger).every(([property, value]) => group[property] === value);

/** Whether the group's figure of this name was hidden: what depends on the same count is hidden with it. */
export function isHidden(figures: readonly Figure[], name: string, group: Group): boolean {
  const wanted = JSON.stringify(group);
  return figures.some((figure) => figure.suppressed && figure.name === name && JSON.stringify(figure.group) === wanted);
}
