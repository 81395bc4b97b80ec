import { toPoint, type Point } from '../calculations/astigmatism/double-angle.ts';
import { adjustedRate, observedAgainstExpected } from '../statistics/observed-expected.ts';
import { cusumChart } from '../statistics/risk-adjusted-cusum.ts';
import type { Ellipse } from '../statistics/astigmatism-groups.ts';
import { acuity } from './acuity.ts';
import { caseMix, caseMixWords } from './case-mix.ts';
import { joinCases, type Case, type JoinedSet } from './cases.ts';
import { completeness, elementShares } from './completeness.ts';
import { complicationKinds, complications } from './complications.ts';
import type { PeriodLength } from './dates.ts';
import type { Figure, Group } from './figure.ts';
import { bySurgeonAndPeriod, standardGroups, surgeonOf } from './group.ts';
import { groupBy } from './group-by.ts';
import { incisionFigures, incisionGroups, type IncisionGroup } from './incisions.ts';
import type { AuditPartial } from './partial.ts';
import { refraction, refractionShift } from './refraction.ts';
import { allOverdue, reviews, type OverdueReview } from './reviews.ts';
import { riskedCases, ruptures, scaled, scaleOf, type RiskedCase } from './rupture.ts';
import { standOuts, type FunnelPoint, type StandOut, type SurgeonChart } from './stand-out.ts';
import { upTo, type UpTo } from './up-to.ts';
import { isHidden, SMALL_CELL, suppressSmallCells } from './suppression.ts';

export interface AuditOptions {
  /** The day of the audit, ISO: what is dated later is left out, reviews due before it are looked for. */
  readonly asOf: string;
  readonly period?: PeriodLength;
  /**
   * Groups with fewer events or eyes than this are not shown, nor are single notes named; 0 shows all, for the
   * department itself.
   */
  readonly suppressBelow?: number;
}

/** Where the set begins and ends, and what could not be counted. */
export interface AuditedSet extends Omit<JoinedSet, 'cases'> {
  readonly operations: number;
  readonly followUps: number;
  readonly amendments: number;
  readonly unreadable: number;
  /** Operations and follow-ups dated after the day of the audit, which none of the others count. */
  readonly later: number;
  readonly from: string | null;
  readonly to: string | null;
}

export interface DoubleAnglePlot {
  readonly group: Group;
  readonly eyes: readonly Point[];
  readonly centroid: Point;
  readonly ellipses: { readonly centroid: Ellipse; readonly individuals: Ellipse } | null;
}

export interface AuditPlots {
  readonly funnel: { readonly overallRate: number; readonly points: readonly FunnelPoint[] } | null;
  readonly charts: readonly SurgeonChart[];
  readonly predictionErrors: readonly number[];
  readonly doubleAngle: readonly DoubleAnglePlot[];
}

export interface Audit {
  readonly version: 1;
  readonly asOf: string;
  readonly period: PeriodLength;
  readonly suppressBelow: number;
  readonly set: AuditedSet;
  readonly figures: readonly Figure[];
  readonly standOuts: readonly StandOut[];
  /** Empty where small numbers are hidden. */
  readonly overdue: readonly OverdueReview[];
  readonly plots: AuditPlots;
}

const DOUBLED_ODDS = { oddsRatio: 2 } as const;
const RUPTURE = 'posterior-capsule-rupture';
const CENTROID = 'induced-centroid';
const PREDICTION_ERROR = 'prediction-error-mean';

function setOf({ partial, later }: UpTo, joined: JoinedSet): AuditedSet {
  const { cases, ...counts } = joined;
  return {
    ...counts,
    operations: partial.operations.length,
    followUps: partial.followUps.length,
    amendments: partial.amendments.length,
    unreadable: partial.unreadable,
    later,
    from: cases[0]?.operation.date ?? null,
    to: cases.at(-1)?.operation.date ?? null,
  };
}

/** Ids of notes of the set that were amended. */
function amendedIn({ amendments }: AuditPartial): readonly string[] {
  return [...new Set(amendments.flatMap(({ amends }) => amends ?? []))];
}

function chartsOf(risked: readonly RiskedCase[], risk: SurgeonChart['risk']): readonly SurgeonChart[] {
  return groupBy(risked, (one) => one.surgeon).map(([surgeon, own]) => ({
    surgeon,
    risk,
    ids: own.map((one) => one.id),
    dates: own.map((one) => one.date),
    chart: cusumChart(own, DOUBLED_ODDS),
  }));
}

function funnelOf(risked: readonly RiskedCase[], overallRate: number): readonly FunnelPoint[] {
  return groupBy(risked, (one) => one.surgeon).flatMap(([surgeon, own]) => {
    const result = observedAgainstExpected(own);
    const rate = adjustedRate(result, overallRate);
    return rate === null ? [] : [{ surgeon, n: result.n, adjustedRate: rate }];
  });
}

function doubleAngleOf({ group, induced: eyes, summary }: IncisionGroup): readonly DoubleAnglePlot[] {
  if (summary === null) return [];
  const points = eyes.map((eye) => toPoint(eye.fromIncision));
  return [{ group, eyes: points, centroid: summary.centroidPoint, ellipses: summary.ellipses }];
}

function figuresOf(
  cases: readonly Case[],
  incisions: readonly IncisionGroup[],
  options: Required<AuditOptions>,
): readonly Figure[] {
  const groups = standardGroups(cases, options.period);
  const scale = scaleOf(riskedCases(cases, surgeonOf));
  return [
    ...groups.flatMap(caseMix),
    ...caseMixWords(cases),
    ...groups.flatMap(complications),
    ...complicationKinds(cases),
    ...groups.flatMap((group) => ruptures(group, surgeonOf, scale)),
    ...groups.flatMap(refraction),
    ...bySurgeonAndPeriod(cases, options.period).flatMap(refractionShift),
    ...incisions.flatMap(incisionFigures),
    ...groups.flatMap(acuity),
    ...groups.map(completeness),
    ...elementShares(cases, options.period),
    ...groups.map((group) => reviews(group, options.asOf, surgeonOf)),
  ];
}

/**
 * The audit of a set from its merged facts. Pure: the same facts and options give the same figures, however the
 * notes were divided between shards or workers.
 */
export function audit(all: AuditPartial, given: AuditOptions): Audit {
  const options = { period: 'quarter', suppressBelow: SMALL_CELL, ...given } as const;
  const known = upTo(all, options.asOf);
  const joined = joinCases(known.partial);
  const { cases } = joined;
  const incisions = incisionGroups(cases, surgeonOf);
  const figures = suppressSmallCells(figuresOf(cases, incisions, options), options.suppressBelow);

  const risked = riskedCases(cases, surgeonOf);
  const events = risked.filter((one) => one.event).length;
  const overallRate = risked.length === 0 ? null : events / risked.length;
  const scale = scaleOf(risked);
  const isOpen = options.suppressBelow < 2;
  const open = (surgeon: string): boolean => !isHidden(figures, RUPTURE, { surgeon });
  const own = scale === null ? [] : scaled(risked, scale);
  const charts = [...chartsOf(risked, 'model'), ...chartsOf(own, 'own')];
  const isOverallOpen = !isHidden(figures, RUPTURE, {});
  const points = overallRate === null ? [] : funnelOf(own, overallRate);
  const shownIncisions = incisions.filter(({ group }) => !isHidden(figures, CENTROID, group));

  return {
    version: 1,
    asOf: options.asOf,
    period: options.period,
    suppressBelow: options.suppressBelow,
    set: setOf(known, joined),
    figures,
    standOuts: standOuts({
      cases,
      amended: amendedIn(known.partial),
      figures,
      funnel: points,
      overallRate,
      charts,
      incisions: shownIncisions,
      isShown: open,
      suppressBelow: options.suppressBelow,
    }),
    overdue: isOpen ? allOverdue(cases, options.asOf, surgeonOf) : [],
    plots: {
      funnel:
        overallRate === null || !isOverallOpen || events === 0
          ? null
          : { overallRate, points: points.filter(({ surgeon }) => open(surgeon)) },
      charts: charts
        .filter(({ surgeon }) => open(surgeon))
        .map((chart) => (isOpen ? chart : { ...chart, ids: [], dates: [] })),
      predictionErrors: isHidden(figures, PREDICTION_ERROR, {})
        ? []
        : cases.map((one) => one.predictionError).filter((error) => error !== null),
      doubleAngle: shownIncisions.filter(({ group }) => 'surgeon' in group).flatMap(doubleAngleOf),
    },
  };
}
