import { codeSets, type CodeSetName, type CodeTable } from '@sideport/schemas/codes/table.ts';
import { compareChosen } from './compare.ts';
import { diagnosisDrafts, diagnosisKeys } from './diagnosis-rules.ts';
import type { CodingFacts } from './facts.ts';
import { OPCS_KEYS, opcsDrafts } from './opcs-rules.ts';
import { PCS_KEYS, pcsDrafts } from './pcs-rules.ts';
import { notCoded, type CodeSuggestion, type CodeSuggestions, type Draft, type NotCoded } from './suggestion.ts';

export const CODING_CAUTION =
  'Suggestions from what the note records, for a coder to confirm against the edition in force and local rules. Codes marked "from memory" have not been compared with the published edition.';

export interface CodeTables {
  readonly diagnoses: CodeTable;
  readonly procedures: CodeTable;
}

/** The entries that are asked of each table of a set: one by another name is never used. */
export function keysOf(set: CodeSetName): Readonly<Record<keyof CodeTables, readonly string[]>> {
  return { diagnoses: diagnosisKeys(set), procedures: set === 'icd10cm' ? PCS_KEYS : OPCS_KEYS };
}

/**
 * Suggests codes for one operation on one eye. The side comes from the eye alone: without it nothing is suggested.
 * @param tables the department's own tables, where it has some
 */
export function suggestCodes(
  facts: CodingFacts,
  set: CodeSetName,
  tables: CodeTables = codeSets[set],
): CodeSuggestions {
  const { eye } = facts;
  if (!eye) {
    const without = notCoded('the whole operation', 'the note does not say which eye was operated', []);
    return { suggestions: [], notCoded: [without], compared: [], caution: CODING_CAUTION };
  }
  const diagnoses = diagnosisDrafts(facts, set);
  const procedures = set === 'icd10cm' ? pcsDrafts(facts) : opcsDrafts(facts);
  const missing: NotCoded[] = [];
  const suggestions = [
    ...written(diagnoses.drafts, 'diagnosis', tables.diagnoses, eye.value, missing),
    ...written(procedures.drafts, 'procedure', tables.procedures, eye.value, missing),
  ];
  return {
    suggestions,
    notCoded: [...diagnoses.notCoded, ...procedures.notCoded, ...missing],
    compared: compareChosen(facts, suggestions, [tables.diagnoses, tables.procedures]),
    caution: CODING_CAUTION,
  };
}

function written(
  drafts: readonly Draft[],
  kind: CodeSuggestion['kind'],
  table: CodeTable,
  eye: 'right' | 'left',
  missing: NotCoded[],
): readonly CodeSuggestion[] {
  const suggestions: CodeSuggestion[] = [];
  for (const draft of drafts) {
    const entry = table.codes.find((candidate) => candidate.key === draft.key);
    const because = draft.facts.flatMap((fact) =>
      fact.from.map((field, at) => ({
        field,
        value: (typeof fact.says === 'object' ? fact.says[at] : fact.says) ?? String(fact.value),
      })),
    );
    const earlier = entry ? suggestions.findIndex(({ code }) => code === entry[eye]) : -1;
    const same = suggestions[earlier];
    if (!entry) {
      missing.push(notCoded(draft.key, `the table of ${table.system} has no entry for it`, draft.facts));
    } else if (same) {
      suggestions[earlier] = { ...same, because: [...same.because, ...because] };
    } else {
      suggestions.push({
        system: table.system,
        edition: table.edition,
        code: entry[eye],
        title: entry.title,
        status: entry.status,
        codeSource: entry.source ?? entry.status,
        kind,
        key: entry.key,
        order: suggestions.length + 1,
        because,
        rule: draft.rule,
        wouldChange: draft.wouldChange,
      });
    }
  }
  return suggestions;
}
