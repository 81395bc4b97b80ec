import type { Operation } from '@sideport/schemas';
import type { CodeSuggestion, CodeSuggestions } from '../codes/suggestion.ts';

/** What a reader of the document is told of its codes, each a note of the procedure. */
export function noted(
  note: Operation,
  codes: CodeSuggestions | undefined,
  withoutPlace: readonly { readonly system: string; readonly code: string }[],
): readonly string[] {
  const chosen = new Set<string | undefined>(note.codes?.items.map(({ system }) => system?.value));
  const suggested = codes?.suggestions.filter(({ system }) => !chosen.has(system)) ?? [];
  return [
    ...(codes && (codes.suggestions.length > 0 || codes.notCoded.length > 0) ? [codes.caution] : []),
    ...suggested.map(whySuggested),
    ...(codes?.compared ?? []).map(({ system, message }) => `Codes of ${system}: ${message}`),
    ...(codes?.notCoded ?? []).map(({ what, why }) => `Not coded: ${what}: ${why}.`),
    ...withoutPlace.map(({ system, code }) => `${system} ${code} has no place among the coded data of this document.`),
  ];
}

function whySuggested({ system, code, title, because, rule, edition, status }: CodeSuggestion): string {
  const fields = because.map(({ field, value }) => `${field}: ${value}`).join('; ');
  const named = title === '' ? '' : ` (${title})`;
  return `Suggested: ${system} ${code}${named}, because ${fields}. Rule: ${rule.says} Source: ${rule.source} (${rule.status}). The code: ${edition} (${status}).`;
}
