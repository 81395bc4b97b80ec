import { componentAcross, componentAlong, difference } from '../calculations/astigmatism/double-angle.ts';
import type { Vector } from '../calculations/quantities.ts';
import { compareText } from '../reports/report-input.ts';
import { daysBetween } from './dates.ts';
import type { FollowUpFacts, IncisionFacts, OperationFacts } from './facts.ts';
import { groupBy } from './group-by.ts';
import type { AuditPartial } from './partial.ts';

/** Days after the operation in which a visit counts for an outcome. Common practice, no source. */
export interface OutcomeWindow {
  readonly fromDays: number;
  readonly toDays: number;
}

export const REFRACTION_WINDOW: OutcomeWindow = { fromDays: 14, toDays: 183 };
/** The wound must have settled. */
export const CORNEA_WINDOW: OutcomeWindow = { fromDays: 28, toDays: 366 };

/** An operation with what its later visits found. */
export interface Case {
  readonly operation: OperationFacts;
  readonly visits: readonly FollowUpFacts[];
  readonly refraction: Outcome<number> | null;
  readonly acuity: Outcome<NonNullable<FollowUpFacts['acuity']>> | null;
  /** Achieved minus predicted spherical equivalent, D; minus is more myopic than predicted. */
  readonly predictionError: number | null;
  readonly induced: InducedAstigmatism | null;
}

export interface Outcome<V> {
  readonly value: V;
  readonly days: number;
}

export interface InducedAstigmatism {
  readonly incision: IncisionFacts;
  /** Change of the cornea; axis = meridian that became steeper. */
  readonly vector: Vector;
  /** The same with its axis counted from the incision, so that eyes and sites can be put together. */
  readonly fromIncision: Vector;
  readonly flatteningD: number;
  readonly torqueD: number;
}

export interface JoinedSet {
  /** Final operations with a date, in order of date and id. */
  readonly cases: readonly Case[];
  readonly notFinal: number;
  readonly undated: number;
  /** Operations left out because another one has the same id. */
  readonly repeatedIds: number;
  /** Follow-ups that name no operation of the set. */
  readonly unjoined: number;
  /** Follow-ups left out because they have no date, or one before the operation. */
  readonly misdated: number;
}

/** The last visit inside the window that has the value. */
function lastWithin<V>(
  visits: readonly { readonly visit: FollowUpFacts; readonly days: number }[],
  window: OutcomeWindow,
  valueOf: (visit: FollowUpFacts) => V | null,
): Outcome<V> | null {
  for (const { visit, days } of visits.toReversed()) {
    const value = valueOf(visit);
    if (value !== null && days >= window.fromDays && days <= window.toDays) return { value, days };
  }
  return null;
}

function inducedBy(operation: OperationFacts, after: Vector | undefined): InducedAstigmatism | null {
  const { incision, corneaBefore } = operation;
  if (incision === null || corneaBefore === null || after === undefined) return null;
  const vector = difference(after, corneaBefore);
  const { meridian } = incision;
  const turned = vector.axis === null ? null : (((vector.axis - meridian) % 180) + 180) % 180 || 180;
  return {
    incision,
    vector,
    fromIncision: { magnitude: vector.magnitude, axis: turned },
    flatteningD: -componentAlong(vector, meridian),
    torqueD: componentAcross(vector, meridian + 90),
  };
}

function caseOf(operation: OperationFacts, date: string, followUps: readonly FollowUpFacts[]): Case {
  const dated = followUps
    .flatMap((visit) => {
      const days = visit.date === null ? null : daysBetween(date, visit.date);
      return days === null || days < 0 ? [] : [{ visit, days }];
    })
    .toSorted((a, b) => a.days - b.days || compareText(a.visit.id, b.visit.id));
  const refraction = lastWithin(dated, REFRACTION_WINDOW, (visit) => visit.refractionD);
  const cornea = lastWithin(dated, CORNEA_WINDOW, (visit) => visit.cornea);
  const { predictedD } = operation;
  return {
    operation,
    visits: dated.map(({ visit }) => visit),
    refraction,
    acuity: lastWithin(dated, REFRACTION_WINDOW, (visit) => visit.acuity),
    predictionError: refraction === null || predictedD === null ? null : refraction.value - predictedD,
    induced: inducedBy(operation, cornea?.value),
  };
}

/** Joins every final operation with its later visits and says what could not be joined. */
export function joinCases(partial: AuditPartial): JoinedSet {
  const visits = new Map(groupBy(partial.followUps, (visit) => visit.operation ?? ''));
  const ids = new Set(partial.operations.map((operation) => operation.id));
  const seen = new Set<string>();
  const cases: Case[] = [];
  const counts = { notFinal: 0, undated: 0, repeatedIds: 0 };
  for (const operation of partial.operations) {
    if (seen.has(operation.id)) counts.repeatedIds += 1;
    else if (operation.status !== 'final') counts.notFinal += 1;
    else if (operation.date === null) counts.undated += 1;
    else cases.push(caseOf(operation, operation.date, visits.get(operation.id) ?? []));
    seen.add(operation.id);
  }
  const joined = partial.followUps.filter((visit) => visit.operation !== null && ids.has(visit.operation));
  const used = cases.reduce((sum, one) => sum + one.visits.length, 0);
  const ofCases = cases.reduce((sum, one) => sum + (visits.get(one.operation.id)?.length ?? 0), 0);
  return {
    ...counts,
    cases: cases.toSorted(
      (a, b) =>
        compareText(a.operation.date ?? '', b.operation.date ?? '') || compareText(a.operation.id, b.operation.id),
    ),
    unjoined: partial.followUps.length - joined.length,
    misdated: ofCases - used,
  };
}
