import { clopperPearson, wilson, type Interval } from '../statistics/proportions.ts';

export interface FigureInterval extends Interval {
  readonly level: number;
  readonly method: string;
}

/** A published figure to hold one's own against. */
export interface Benchmark {
  readonly value: number;
  readonly source: string;
}

/** One figure of the audit with everything needed to judge it. */
export interface Figure {
  /** Kebab-case; the same name in every group. */
  readonly name: string;
  readonly label: string;
  /** What it is broken down by, for instance `{ surgeon: 'S1' }`; empty for the whole set. */
  readonly group: Group;
  /** null when no value can be given, or when it is suppressed. */
  readonly value: number | null;
  readonly unit: string;
  /** Events behind a share; null where it is no share. */
  readonly count: number | null;
  /** Cases the value rests on; null when it is suppressed. */
  readonly n: number | null;
  /** Cases that belong in the denominator and lack what the value needs; null when it is suppressed. */
  readonly missing: number | null;
  readonly interval: FigureInterval | null;
  readonly method: string;
  readonly source: string;
  readonly benchmarks: readonly Benchmark[];
  readonly cautions: readonly string[];
  /** Counts of events that could point at a person: small ones are suppressed. */
  readonly sensitive: boolean;
  readonly suppressed: boolean;
}

export type Group = Readonly<Record<string, string>>;

export type FigureText = Pick<Figure, 'name' | 'label' | 'method' | 'source'> &
  Partial<Pick<Figure, 'benchmarks' | 'cautions' | 'unit' | 'sensitive'>>;

interface Measured {
  readonly value: number | null;
  readonly n: number;
  readonly missing: number;
  readonly interval?: FigureInterval | null;
  readonly count?: number;
}

export function figure(text: FigureText, group: Group, measured: Measured): Figure {
  return {
    unit: '',
    benchmarks: [],
    cautions: [],
    sensitive: false,
    ...text,
    group,
    count: null,
    interval: null,
    ...measured,
    suppressed: false,
  };
}

// Below this many events Wilson's interval is short of its level near 0; the exact one never is.
const EXACT_BELOW = 5;

/** A share in percent with Wilson's interval, or the exact one when events or non-events are few. */
export function share(text: FigureText, group: Group, count: number, n: number, missing: number): Figure {
  const rare = Math.min(count, n - count) < EXACT_BELOW;
  const interval = rare ? clopperPearson(count, n) : wilson(count, n);
  return figure({ unit: '%', ...text }, group, {
    value: n === 0 ? null : (100 * count) / n,
    count,
    n,
    missing,
    interval: interval && {
      low: 100 * interval.low,
      high: 100 * interval.high,
      level: 0.95,
      method: rare ? 'Clopper-Pearson (exact)' : 'Wilson',
    },
  });
}

/** Of some cases, how many have a property, and for how many it is not recorded. */
export function shareOf<C>(
  text: FigureText,
  group: Group,
  cases: readonly C[],
  has: (one: C) => boolean | null,
): Figure {
  const answers = cases.map(has);
  const known = answers.filter((answer) => answer !== null);
  return share(text, group, known.filter(Boolean).length, known.length, answers.length - known.length);
}
