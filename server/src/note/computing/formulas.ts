import type { FormulaSlug } from '@sideport/schemas';
import type { OperationFacts } from './operation-facts.ts';

const BY_WORD: Readonly<Record<string, FormulaSlug>> = {
  'SRK/T': 'srk-t',
  'Holladay 1': 'holladay-1',
  'Hoffer Q': 'hoffer-q',
  Haigis: 'haigis',
  T2: 't2',
};

/** The formula that a word of the note stands for; undefined for one that is not published here. */
export const slugOf = (word: string | undefined): FormulaSlug | undefined =>
  word === undefined ? undefined : BY_WORD[word];

/** The formulas that the plan names, else the department's first choice. */
export function preferredFormulas({ note, department }: OperationFacts): readonly FormulaSlug[] {
  const planned = note.plan?.formula?.items.flatMap((item) => slugOf(item.value) ?? []) ?? [];
  if (planned.length > 0) return planned;
  return department?.formulas?.items.flatMap((item) => slugOf(item.value) ?? []).slice(0, 1) ?? [];
}
