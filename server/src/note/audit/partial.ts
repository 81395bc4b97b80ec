import { compareText } from '../reports/report-input.ts';
import type { AuditFacts, FollowUpFacts, OperationFacts } from './facts.ts';

/**
 * What one run over some of the notes hands on. Parts of a set, from shards or workers, merge in any order to the
 * same whole; follow-ups are joined to their operations only after merging, because they may lie in other parts.
 */
export interface AuditPartial {
  readonly version: 1;
  readonly operations: readonly OperationFacts[];
  readonly followUps: readonly FollowUpFacts[];
  /** Notes of another kind (amendments). */
  readonly others: number;
  /** Notes whose kind or id could not be read. */
  readonly unreadable: number;
}

export const EMPTY_PARTIAL: AuditPartial = {
  version: 1,
  operations: [],
  followUps: [],
  others: 0,
  unreadable: 0,
};

/** Gathers facts one note at a time. */
export class AuditCollector {
  readonly #operations: OperationFacts[] = [];
  readonly #followUps: FollowUpFacts[] = [];
  #others = 0;
  #unreadable = 0;

  add(facts: AuditFacts | 'other' | 'unreadable'): void {
    if (facts === 'other') this.#others += 1;
    else if (facts === 'unreadable') this.#unreadable += 1;
    else if (facts.record === 'operation') this.#operations.push(facts);
    else this.#followUps.push(facts);
  }

  finish(): AuditPartial {
    return mergePartials([
      {
        version: 1,
        operations: this.#operations,
        followUps: this.#followUps,
        others: this.#others,
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
    others: parts.reduce((sum, part) => sum + part.others, 0),
    unreadable: parts.reduce((sum, part) => sum + part.unreadable, 0),
  };
}
