import { compareText } from '../reports/report-input.ts';
import type { AmendmentFacts, AuditFacts, FollowUpFacts, OperationFacts } from './facts.ts';

/**
 * What one run over some of the notes hands on. Parts of a set, from shards or workers, merge in any order to the
 * same whole; follow-ups are joined to their operations only after merging, because they may lie in other parts.
 */
export interface AuditPartial {
  readonly version: 1;
  readonly operations: readonly OperationFacts[];
  readonly followUps: readonly FollowUpFacts[];
  readonly amendments: readonly AmendmentFacts[];
  /** Notes whose kind or id could not be read. */
  readonly unreadable: number;
}

export const EMPTY_PARTIAL: AuditPartial = {
  version: 1,
  operations: [],
  followUps: [],
  amendments: [],
  unreadable: 0,
};

/** Gathers facts one note at a time. */
export class AuditCollector {
  readonly #operations: OperationFacts[] = [];
  readonly #followUps: FollowUpFacts[] = [];
  readonly #amendments: AmendmentFacts[] = [];
  #unreadable = 0;

  add(facts: AuditFacts | 'unreadable'): void {
    if (facts === 'unreadable') this.#unreadable += 1;
    else if (facts.record === 'operation') this.#operations.push(facts);
    else if (facts.record === 'follow-up') this.#followUps.push(facts);
    else this.#amendments.push(facts);
  }

  finish(): AuditPartial {
    return mergePartials([
      {
        version: 1,
        operations: this.#operations,
        followUps: this.#followUps,
        amendments: this.#amendments,
        unreadable: this.#unreadable,
      },
    ]);
  }
}

function inOrder<F extends AuditFacts>(facts: readonly F[]): readonly F[] {
  // The whole record breaks ties, so that two notes with one id come in the same order from any shard.
  const keyed = facts.map((fact) => ({ fact, id: fact.id, whole: JSON.stringify(fact) }));
  return keyed.toSorted((a, b) => compareText(a.id, b.id) || compareText(a.whole, b.whole)).map(({ fact }) => fact);
}

/** One partial result of several; the order of the parts does not matter. */
export function mergePartials(parts: readonly AuditPartial[]): AuditPartial {
  return {
    version: 1,
    operations: inOrder(parts.flatMap((part) => part.operations)),
    followUps: inOrder(parts.flatMap((part) => part.followUps)),
    amendments: inOrder(parts.flatMap((part) => part.amendments)),
    unreadable: parts.reduce((sum, part) => sum + part.unreadable, 0),
  };
}
