import type { Check } from './check.ts';

/** Every check, in the order in which `explain` lists them within their groups. */
export const allChecks: readonly Check[] = [];
