import type { Case } from './cases.ts';
import { periodOf, type PeriodLength } from './dates.ts';
import type { Group } from './figure.ts';
import { groupBy } from './group-by.ts';

export interface CaseGroup {
  readonly group: Group;
  readonly cases: readonly Case[];
}

export const NO_SURGEON = 'not recorded';

export function surgeonOf(one: Case): string {
  return one.operation.surgeon ?? NO_SURGEON;
}

export function bySurgeon(cases: readonly Case[]): readonly CaseGroup[] {
  return groupBy(cases, surgeonOf).map(([surgeon, members]) => ({ group: { surgeon }, cases: members }));
}

export function byPeriod(cases: readonly Case[], length: PeriodLength): readonly CaseGroup[] {
  return groupBy(cases, (one) => periodOf(one.operation.date ?? '', length)).map(([period, members]) => ({
    group: { period },
    cases: members,
  }));
}

/** Each surgeon in each period. */
export function bySurgeonAndPeriod(cases: readonly Case[], length: PeriodLength): readonly CaseGroup[] {
  return bySurgeon(cases).flatMap((surgeon) =>
    byPeriod(surgeon.cases, length).map(({ group, cases: own }) => ({
      group: { ...surgeon.group, ...group },
      cases: own,
    })),
  );
}

/** The whole set, then each surgeon, then each period. */
export function standardGroups(cases: readonly Case[], length: PeriodLength): readonly CaseGroup[] {
  return [{ group: {}, cases }, ...bySurgeon(cases), ...byPeriod(cases, length)];
}
