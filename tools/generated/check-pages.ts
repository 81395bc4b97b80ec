import { explainAll, explainCheck } from '../../server/src/note/checks/explain.ts';
import { knownChecks } from '../../server/src/note/checks/known-checks.ts';

/** The page of every check, with what its examples yield, and the list of them. */
export function checkPages(): Readonly<Record<string, string>> {
  const pages = knownChecks.map(({ id }) => [`docs/checks/${id}.md`, explainCheck(id)?.markdown ?? ''] as const);
  return { ...Object.fromEntries(pages), 'docs/checks/README.md': explainAll().markdown };
}
