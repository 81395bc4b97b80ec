import { allChecks } from './all-checks.ts';
import type { CheckInfo } from './check.ts';
import { readerChecks } from './reader-checks.ts';

/** Every check that can make a remark: those of the reader first. */
export const knownChecks: readonly CheckInfo[] = [...readerChecks, ...allChecks];

const byId = new Map(knownChecks.map((check) => [check.id, check]));

export function checkById(id: string): CheckInfo | undefined {
  return byId.get(id);
}

/** Whether neither a note nor a department may silence the check. */
export function isFixedCheck(id: string): boolean {
  return byId.get(id)?.allowable !== true;
}
