import { knownChecks } from '../checks/known-checks.ts';
import type { Proposal } from './proposal.ts';

const BEGUN = /#\s*allow\s+([a-z0-9-]*)$/u;

/** In a comment that begins to allow something: the checks that may be allowed. A reason has to be written behind. */
export function proposeAllowances(text: string, lineStart: number, offset: number): readonly Proposal[] {
  const typed = BEGUN.exec(text.slice(lineStart, offset))?.[1];
  if (typed === undefined) return [];
  return knownChecks
    .filter(({ allowable }) => allowable)
    .map(({ id, summary }) => ({
      label: id,
      kind: 'reference',
      detail: summary,
      insert: `${id}: `,
      replace: { start: offset - typed.length, end: offset },
      more: false,
    }));
}
