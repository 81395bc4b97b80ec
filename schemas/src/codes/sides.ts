import { codeSets, measurements, type CodeTable } from './table.ts';

export type CodedSide = 'right' | 'left' | 'both';

/** Codes of both eyes: no operation on one eye has one. */
const BOTH: Readonly<Record<string, readonly string[]>> = {
  // OPCS-4.11, quoted second-hand in public coding guides.
  'OPCS-4': ['Z94.1'],
};

const plain = (code: string): string => code.replace('.', '').trim().toUpperCase();

/**
 * The side that a code is for, where the code tells one. In ICD-10-CM the last place says it wherever there are sides:
 * 1 right, 2 left, 3 both (official guidelines, from memory).
 * @param tables a department's own tables, where it has some
 */
export function sideOfCode(system: string, code: string, tables: readonly CodeTable[] = own()): CodedSide | undefined {
  const asked = plain(code);
  if (BOTH[system]?.some((both) => plain(both) === asked)) return 'both';
  for (const table of [...tables, measurements]) {
    if (table.system !== system) continue;
    for (const { right, left } of table.codes) {
      if (right === left) continue;
      if (plain(right) === asked) return 'right';
      if (plain(left) === asked) return 'left';
      if (system === 'ICD-10-CM' && plain(right).replace(/1$/u, '3') === asked) return 'both';
    }
  }
  return undefined;
}

function own(): readonly CodeTable[] {
  return Object.values(codeSets).flatMap(({ diagnoses, procedures }) => [diagnoses, procedures]);
}
