import { checkPages, explainAll } from '../../server/src/note/checks/explain.ts';

/** The page of every check, with what its examples yield, and the list of them. */
export function checkPageFiles(): Readonly<Record<string, string>> {
  const pages = Object.entries(checkPages()).map(([id, page]) => [`docs/checks/${id}.md`, page] as const);
  return { ...Object.fromEntries(pages), 'docs/checks/README.md': explainAll().markdown };
}
