import { sideOfCode } from '@sideport/schemas/codes/sides.ts';
import { measurements, type CodeTable } from '@sideport/schemas/codes/table.ts';
import type { CodingFacts } from './facts.ts';
import type { CodeSuggestion, Compared } from './suggestion.ts';

/** Sets the coder's own codes beside the suggestions; nothing is changed. */
export function compareChosen(
  facts: CodingFacts,
  suggestions: readonly CodeSuggestion[],
  tables: readonly CodeTable[],
): readonly Compared[] {
  const systems = new Set(facts.chosen.map((fact) => fact.value.system));
  const chosen = facts.chosen.filter((fact) => tables.some((table) => table.system === fact.value.system));
  const others = facts.chosen.filter((fact) => !chosen.includes(fact));
  const leftOut = suggestions.filter(
    ({ system, code }) =>
      systems.has(system) && !chosen.some(({ value }) => value.system === system && same(value.code, code)),
  );
  return [
    ...chosen.map((fact) => verdict(fact, facts, suggestions, tables)),
    ...others.flatMap((fact) => otherSide(fact, facts, tables) ?? []),
    ...facts.chosen.flatMap(({ value }) => licensedWords(value) ?? []),
    ...leftOut.map(({ system, code, title, because }): Compared => ({
      system,
      code,
      verdict: 'left out',
      message: `${code} (${title}) is suggested from ${because.map(({ field }) => field).join(' and ')}, and the note's own codes do not have it.`,
    })),
  ];
}

const same = (a: string, b: string): boolean => a.replace('.', '').toUpperCase() === b.replace('.', '').toUpperCase();

const BILATERAL = 'ICD-10-CM Official Guidelines, I.B.13';

type Chosen = CodingFacts['chosen'][number];

function verdict(
  fact: Chosen,
  facts: CodingFacts,
  suggestions: readonly CodeSuggestion[],
  tables: readonly CodeTable[],
): Compared {
  const { system, code } = fact.value;
  if (suggestions.some((suggestion) => suggestion.system === system && same(suggestion.code, code))) {
    return { system, code, verdict: 'same', message: `${code} is also suggested.` };
  }
  const message = `${code} is the coder's own choice; nothing in the note led to it here. It stands.`;
  return otherSide(fact, facts, tables) ?? { system, code, verdict: 'not suggested', message };
}

/** A code that is not for the eye of the note, or not for one eye alone. */
function otherSide(
  { value }: Chosen,
  { eye, whichEye }: CodingFacts,
  tables: readonly CodeTable[],
): Compared | undefined {
  const { system, code } = value;
  const side = sideOfCode(system, code, tables);
  if (!eye || side === undefined || side === eye.value) return undefined;
  const note = `the note says ${eye.value} (${eye.from.join(', ')})`;
  if (side === 'both') {
    const rule =
      system === 'ICD-10-CM' && whichEye?.value !== 'second'
        ? `It stands for a diagnosis at the operation on the first eye while the other still has it, and not at the second (${BILATERAL})`
        : 'Each operation has the code of its own eye';
    return { system, code, verdict: 'both sides', message: `${code} is a code of both eyes, and ${note}. ${rule}.` };
  }
  const entry = [...tables, measurements]
    .filter((table) => table.system === system)
    .flatMap((table) => table.codes)
    .find((one) => same(one[side], code));
  const instead = entry ? ` For the ${eye.value} eye it would be ${entry[eye.value]}.` : '';
  return {
    system,
    code,
    verdict: 'other side',
    message: `${code} is a code of the ${side} eye, and ${note}.${instead}`,
  };
}

/** Words beside a code of CPT may be its title, which nobody keeps without a licence. The words are not repeated. */
function licensedWords({ system, code, hasWords }: Chosen['value']): Compared | undefined {
  if (system !== 'CPT' || !hasWords) return undefined;
  const message = `Words stand beside ${code} of CPT. Its titles are the property of the American Medical Association and may not be kept without a licence: write why the code was chosen, never its title.`;
  return { system, code, verdict: 'licensed words', message };
}
