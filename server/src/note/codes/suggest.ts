import { codeSets, type CodeSetName, type CodeTable } from '@sideport/schemas/codes/table.ts';
import { compareChosen } from './compare.ts';
import { diagnosisDrafts } from './diagnosis-rules.ts';
import type { CodingFacts } from './facts.ts';
import { opcsDrafts } from './opcs-rules.ts';
import { pcsDrafts } from './pcs-rules.ts';
import { notCoded, type CodeSuggestion, type CodeSuggestions, type Draft, type NotCoded } from './suggestion.ts';

export const CODING_CAUTION =
  'Suggestions from what the note records, for a coder to confirm against the edition in force and local rules. Codes marked "from memory" have not been compared with the published edition.';

export interface CodeTables {
  readonly diagnoses: CodeTable;
  readonly procedures: CodeTable;
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
    if (!entry) {
      missing.push(notCoded(draft.key, `the table of ${table.system} has no entry for it`, draft.facts));
    } else if (!suggestions.some((earlier) => earlier.code === entry[eye])) {
      suggestions.push({
        system: table.system,
        edition: table.edition,
        code: entry[eye],
        title: entry.title,
        status: entry.status,
        codeSource: entry.source ?? entry.status,
        kind,
        order: suggestions.length + 1,
        because: draft.facts.flatMap((fact) =>
          fact.from.map((field) => ({ field, value: fact.says ?? String(fact.value) })),
        ),
        rule: draft.rule,
        wouldChange: draft.wouldChange,
      });
    }
  }
  return suggestions;
}
