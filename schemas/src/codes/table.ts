import icd10 from './icd10.json' with { type: 'json' };
import icd10cm from './icd10cm.json' with { type: 'json' };
import icd10pcs from './icd10pcs.json' with { type: 'json' };
import loinc from './loinc.json' with { type: 'json' };
import opcs4 from './opcs4.json' with { type: 'json' };
import type { CodeEntry, CodeTable } from './table-schema.ts';

export type { CodeEntry, CodeTable } from './table-schema.ts';

/** The two sets of systems that are suggested together: diagnoses and procedures. A test holds them to the schema. */
export const codeSets = {
  icd10cm: { diagnoses: icd10cm as CodeTable, procedures: icd10pcs as CodeTable },
  'icd10-opcs4': { diagnoses: icd10 as CodeTable, procedures: opcs4 as CodeTable },
} as const satisfies Record<string, { readonly diagnoses: CodeTable; readonly procedures: CodeTable }>;

/** Codes of measurements that have a side; a code for the wrong side is worse than none. */
export const measurements = loinc as CodeTable;

export type CodeSetName = keyof typeof codeSets;

/** A table with the entries of another put in place of those with the same key. */
export function withReplacements(table: CodeTable, replacements: CodeTable): CodeTable {
  const byKey = new Map(replacements.codes.map((entry) => [entry.key, entry]));
  const kept = table.codes.map((entry) => byKey.get(entry.key) ?? entry);
  const added = replacements.codes.filter((entry) => !table.codes.some((old) => old.key === entry.key));
  return { ...table, edition: replacements.edition, codes: [...kept, ...added] };
}

/** The entries nobody has compared with the published edition yet. */
export function needingConfirmation(table: CodeTable): readonly CodeEntry[] {
  return table.codes.filter((entry) => entry.status === 'from memory');
}
