import type { AuditPartial } from './partial.ts';

export interface UpTo {
  readonly partial: AuditPartial;
  /** Operations and follow-ups of later days, which were left out. */
  readonly later: number;
}

/** The set as it was on a day, that day included: what came later is left out. A note without a date stays. */
export function upTo(partial: AuditPartial, day: string): UpTo {
  const isKnownThen = ({ date }: { readonly date: string | null }): boolean => date === null || date <= day;
  const operations = partial.operations.filter(isKnownThen);
  const followUps = partial.followUps.filter(isKnownThen);
  const later = partial.operations.length - operations.length + (partial.followUps.length - followUps.length);
  return later === 0 ? { partial, later } : { partial: { ...partial, operations, followUps }, later };
}
