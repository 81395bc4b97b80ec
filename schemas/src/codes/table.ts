import * as z from 'zod/mini';
import icd10 from './icd10.json' with { type: 'json' };
import icd10cm from './icd10cm.json' with { type: 'json' };
import icd10pcs from './icd10pcs.json' with { type: 'json' };
import opcs4 from './opcs4.json' with { type: 'json' };

/** How well a code is known: `seen` in a named source, quoted second-hand, or written from memory. */
const status = z.enum(['seen', 'second-hand', 'from memory', 'confirmed locally']);

const code = z.strictObject({
  /** What the code stands for; the rules name codes by this key. */
  key: z.string().check(z.minLength(1)),
  right: z.string().check(z.minLength(1)),
  left: z.string().check(z.minLength(1)),
  title: z.string().check(z.minLength(1)),
  status,
  source: z.optional(z.string()),
});

/** The codes of one system that the rules can suggest. A department may replace any of them by its key. */
export const codeTable = z.strictObject({
  system: z.string().check(z.minLength(1)),
  edition: z.string().check(z.minLength(1)),
  terms: z.string(),
  codes: z.array(code),
});

export type CodeTable = z.infer<typeof codeTable>;
export type CodeEntry = CodeTable['codes'][number];

/** The two sets of systems that are suggested together: diagnoses and procedures. */
export const codeSets = {
  icd10cm: { diagnoses: codeTable.parse(icd10cm), procedures: codeTable.parse(icd10pcs) },
  'icd10-opcs4': { diagnoses: codeTable.parse(icd10), procedures: codeTable.parse(opcs4) },
} as const satisfies Record<string, { readonly diagnoses: CodeTable; readonly procedures: CodeTable }>;

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
