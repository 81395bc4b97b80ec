import type { CodeTable } from '@sideport/schemas/codes/table.ts';
import type { CodingFacts, Fact } from './facts.ts';
import type { CodeSuggestion, Compared } from './suggestion.ts';

/** Sets the coder's own codes beside the suggestions; nothing is changed. */
export function compareChosen(
  facts: CodingFacts,
  suggestions: readonly CodeSuggestion[],
  tables: readonly CodeTable[],
): readonly Compared[] {
  const systems = new Set(facts.chosen.map((fact) => fact.value.system));
  const chosen = facts.chosen.filter((fact) => tables.some((table) => table.system === fact.value.system));
  const leftOut = suggestions.filter(
    ({ system, code }) =>
      systems.has(system) && !chosen.some(({ value }) => value.system === system && same(value.code, code)),
  );
  return [
    ...chosen.map((fact) => verdict(fact, facts, suggestions, tables)),
    ...leftOut.map(({ system, code, title, because }): Compared => ({
      system,
      code,
      verdict: 'left out',
      message: `${code} (${title}) is suggested from ${because.map(({ field }) => field).join(' and ')}, and the note's own codes do not have it.`,
    })),
  ];
}

const same = (a: string, b: string): boolean => a.replace('.', '').toUpperCase() === b.replace('.', '').toUpperCase();

function verdict(
  fact: Fact<{ system: string; code: string }>,
  { eye }: CodingFacts,
  suggestions: readonly CodeSuggestion[],
  tables: readonly CodeTable[],
): Compared {
  const { system, code } = fact.value;
  if (suggestions.some((suggestion) => suggestion.system === system && same(suggestion.code, code))) {
    return { system, code, verdict: 'same', message: `${code} is also suggested.` };
  }
  const sided = tables
    .filter((table) => table.system === system)
    .flatMap((table) => table.codes)
    .find((entry) => entry.right !== entry.left && (same(entry.right, code) || same(entry.left, code)));
  const side = sided && (same(sided.right, code) ? 'right' : 'left');
  if (sided && eye && side !== eye.value) {
    const message = `${code} is a code of the ${side} eye, and the note says ${eye.value} (${eye.from.join(', ')}). For the ${eye.value} eye it would be ${sided[eye.value]}.`;
    return { system, code, verdict: 'other side', message };
  }
  return {
    system,
    code,
    verdict: 'not suggested',
    message: `${code} is the coder's own choice; nothing in the note led to it here. It stands.`,
  };
}
