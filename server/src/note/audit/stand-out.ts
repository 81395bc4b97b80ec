import { exactFunnelLimits } from '../statistics/funnel.ts';
import type { CusumChart } from '../statistics/risk-adjusted-cusum.ts';
import type { Case } from './cases.ts';
import { periodOf } from './dates.ts';
import type { Figure, Group } from './figure.ts';
import type { IncisionGroup } from './incisions.ts';

/** Something a registrar should look at. It is a reason to look, never a verdict. */
export interface StandOut {
  readonly kind: string;
  readonly group: Group;
  readonly message: string;
  /** Notes it rests on, when they are few; none where small numbers are hidden. */
  readonly notes: readonly string[];
}

/** One chart of a surgeon over time. */
export interface SurgeonChart {
  readonly surgeon: string;
  readonly risk: 'model' | 'own';
  /** Notes and days of the operations; empty where small numbers are hidden. */
  readonly ids: readonly string[];
  readonly dates: readonly string[];
  readonly chart: CusumChart;
}

const LOOK_WITHIN = 'Look with --suppress-below 0, within the department.';
const ALERT = 0.95;
const ALARM = 0.998;
const LEAST_SHIFT_D = 0.2;
const LEAST_SHIFT_N = 20;

const named = (group: Group): string =>
  Object.entries(group)
    .map(([property, value]) => `${property} ${value}`)
    .join(', ') || 'the whole set';
const two = (value: number): string => value.toFixed(2);

/** The funnel point of a surgeon: case-mix adjusted rate (0 to 1) on n operations, about the set's own rate. */
export interface FunnelPoint {
  readonly surgeon: string;
  readonly n: number;
  readonly adjustedRate: number;
}

function outsideFunnel(point: FunnelPoint, overall: number): StandOut | null {
  const alarm = exactFunnelLimits(overall, point.n, ALARM);
  const alert = exactFunnelLimits(overall, point.n, ALERT);
  if (point.adjustedRate <= alert.high) return null;
  const [level, limit] = point.adjustedRate > alarm.high ? [ALARM, alarm.high] : [ALERT, alert.high];
  return {
    kind: level === ALARM ? 'rupture-alarm' : 'rupture-alert',
    group: { surgeon: point.surgeon },
    message: `The rupture rate of surgeon ${point.surgeon}, adjusted for case mix, is ${two(100 * point.adjustedRate)} % on ${point.n} operations; the ${100 * level} % funnel limit about the set's own ${two(100 * overall)} % is ${two(100 * limit)} %.`,
    notes: [],
  };
}

function chartSignals({ surgeon, risk, ids, dates, chart }: SurgeonChart, isOpen: boolean): StandOut | null {
  if (chart.signals.length === 0) return null;
  const against = risk === 'model' ? 'the model' : "the model scaled to the set's own rate";
  // The day of an operation with a complication leads to a person, its month in a department does not.
  const when = chart.signals.map((at) => dates[at] ?? '?').map((date) => (isOpen ? date : periodOf(date, 'month')));
  return {
    kind: risk === 'model' ? 'cusum-signal' : 'cusum-signal-own',
    group: { surgeon },
    message: `The cumulative chart of surgeon ${surgeon} reached its threshold ${isOpen ? 'on' : 'in'} ${when.join(', ')}: ruptures came about twice as often, in odds, as ${against} expects.`,
    notes: chart.signals.flatMap((at) => ids.slice(at, at + 1)),
  };
}

function shiftedRefraction(figure: Figure): StandOut | null {
  const { value, interval, n, group } = figure;
  if (figure.name !== 'prediction-error-mean' || value === null || interval === null || n === null || n < LEAST_SHIFT_N)
    return null;
  if (Math.abs(value) < LEAST_SHIFT_D || (interval.low <= 0 && interval.high >= 0)) return null;
  return {
    kind: 'refraction-shift',
    group,
    message: `The mean prediction error of ${named(group)} is ${value > 0 ? '+' : ''}${two(value)} D (95 % ${two(interval.low)} to ${two(interval.high)}, n ${n}): eyes end more ${value > 0 ? 'hyperopic' : 'myopic'} than predicted. Look at lens constants, biometry and the lens list.`,
    notes: [],
  };
}

/** A share that lies under (or over) its counterpart of the whole set with its whole interval. */
function apart(figure: Figure, whole: Figure | undefined, direction: 'low' | 'high', words: string): StandOut | null {
  const { value, interval, group } = figure;
  if (value === null || interval === null || whole?.value === null || whole === undefined) return null;
  const isApart = direction === 'low' ? interval.high < whole.value : interval.low > whole.value;
  if (!isApart || Object.keys(group).length === 0) return null;
  return {
    kind: `${figure.name}-${direction}`,
    group,
    message: `${figure.label}, ${named(group)}: ${value.toFixed(1)} % (95 % ${interval.low.toFixed(1)} to ${interval.high.toFixed(1)}, n ${figure.n}), the whole set ${whole.value.toFixed(1)} %. ${words}`,
    notes: [],
  };
}

const COMPARED: Readonly<Record<string, readonly ['low' | 'high', string]>> = {
  'refraction-followed': ['low', 'What is known of this group rests on fewer eyes; ask why the others were not seen.'],
  'within-0.50': ['low', 'Fewer eyes than in the whole set end near the prediction.'],
  'reviews-overdue': ['high', 'More planned reviews than in the whole set have no visit.'],
};

const LARGE_CENTROID_D = 0.5;
const SIGNIFICANT = 0.05;

/** A group of incisions whose mean effect is large and not chance. */
function strongIncision({ group, summary }: IncisionGroup): StandOut | null {
  if (!('surgeon' in group)) return null;
  const p = summary?.hotelling?.p ?? null;
  if (summary === null || p === null || p >= SIGNIFICANT || summary.centroid.magnitude < LARGE_CENTROID_D) return null;
  return {
    kind: 'incision-effect-large',
    group,
    message: `The centroid of the astigmatism induced by ${named(group)} is ${two(summary.centroid.magnitude)} D (n ${summary.n}, Hotelling p ${p < 0.001 ? 'below 0.001' : p.toFixed(3)}): enough to plan with. See audit --learn.`,
    notes: [],
  };
}

const SURPRISE_D = 2;

/** Single eyes far from their prediction: more often a wrong entry, lens or eye than bad luck. */
function surprises(cases: readonly Case[], suppressBelow: number): StandOut | null {
  const far = cases.filter((one) => Math.abs(one.predictionError ?? 0) >= SURPRISE_D);
  if (far.length === 0) return null;
  if (suppressBelow >= 2 && far.length < suppressBelow) {
    return {
      kind: 'refractive-surprise',
      group: {},
      message: `Eyes ended ${SURPRISE_D} D or more from the prediction; their number is hidden because it is small. ${LOOK_WITHIN}`,
      notes: [],
    };
  }
  return {
    kind: 'refractive-surprise',
    group: {},
    message: `${far.length} ${far.length === 1 ? 'eye ended' : 'eyes ended'} ${SURPRISE_D} D or more from the prediction. Compare lens box, biometry and the side in each note.`,
    notes: far.map((one) => one.operation.id),
  };
}

/** Figures rest on notes as they were signed; a correction may change them. */
function amended(ids: readonly string[]): StandOut | null {
  if (ids.length === 0) return null;
  return {
    kind: 'amended-notes',
    group: {},
    message: `${ids.length} ${ids.length === 1 ? 'note was' : 'notes were'} amended and counted as signed. Look whether a correction changes a figure.`,
    notes: ids,
  };
}

/**
 * What must be looked at is said even where numbers are hidden, in words: a rule that protects patients from being
 * found in a table must not protect a rupture rate from being seen.
 */
function withoutNumbers(found: readonly StandOut[], isShown: (surgeon: string) => boolean): readonly StandOut[] {
  const hidden = new Set(found.map(({ group }) => group['surgeon'] ?? '').filter((surgeon) => !isShown(surgeon)));
  return [
    ...found.filter(({ group }) => !hidden.has(group['surgeon'] ?? '')),
    ...[...hidden].map((surgeon) => ({
      kind: 'rupture-hidden',
      group: { surgeon },
      message: `The ruptures of surgeon ${surgeon} stand out; their number is hidden because it is small or would give away a small one. ${LOOK_WITHIN}`,
      notes: [],
    })),
  ];
}

export interface StandOutInput {
  /** Whether the ruptures of a surgeon are shown in figures. */
  readonly isShown: (surgeon: string) => boolean;
  readonly cases: readonly Case[];
  /** Ids of amended notes. */
  readonly amended: readonly string[];
  readonly incisions: readonly IncisionGroup[];
  readonly figures: readonly Figure[];
  readonly funnel: readonly FunnelPoint[];
  readonly overallRate: number | null;
  readonly charts: readonly SurgeonChart[];
  /** Below 2 the report is for the department itself, and names notes. */
  readonly suppressBelow: number;
}

/**
 * Everything that lies outside what chance alone would usually leave. Many groups are looked at, so about one in
 * twenty stands out by chance: each is a question.
 */
export function standOuts(input: StandOutInput): readonly StandOut[] {
  const { figures, funnel, overallRate, charts, cases, incisions, suppressBelow } = input;
  const isOpen = suppressBelow < 2;
  const whole = new Map(figures.filter((f) => Object.keys(f.group).length === 0).map((f) => [f.name, f]));
  const ruptures = [
    ...(overallRate === null ? [] : funnel.map((point) => outsideFunnel(point, overallRate))),
    ...charts.map((chart) => chartSignals(chart, isOpen)),
  ].filter((found) => found !== null);
  const found = [
    ...withoutNumbers(ruptures, input.isShown),
    ...figures.map(shiftedRefraction),
    surprises(cases, suppressBelow),
    amended(input.amended),
    ...incisions.map(strongIncision),
    ...figures.map((figure) => {
      const compared = COMPARED[figure.name];
      return compared === undefined ? null : apart(figure, whole.get(figure.name), ...compared);
    }),
  ].filter((one) => one !== null);
  return isOpen ? found : found.map((one) => ({ ...one, notes: [] }));
}
