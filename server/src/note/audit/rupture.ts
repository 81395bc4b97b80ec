import { observedAgainstExpected } from '../statistics/observed-expected.ts';
import type { MonitoredCase } from '../statistics/risk-adjusted-cusum.ts';
import type { Case } from './cases.ts';
import { figure, shareOf, type Figure, type FigureText, type Group } from './figure.ts';
import type { CaseGroup } from './group.ts';

const DEFINITION =
  'operations that removed the natural lens; posterior capsule torn, or zonule ruptured with vitreous prolapse, derived from the recorded state of capsule, zonule and vitreous; unrecorded states count as missing';
export const RISK_MODEL = 'Narendran et al., Eye 2009;23:31-7 (odds ratios partly from memory)';
const OLD_BASELINE =
  'The model describes operations up to 2006 and expects about twice the ruptures of today; the figure "against the set\'s own rate" compares like with like.';

const RATE: FigureText = {
  name: 'posterior-capsule-rupture',
  label: 'Posterior capsule rupture',
  method: `share of ${DEFINITION}`,
  source: 'UK national cataract audit definition',
  benchmarks: [
    { value: 1.95, source: 'Day et al., Eye 2015;29:552-60 (180,114 eyes)' },
    { value: 1.01, source: 'Sim et al., Eye 2024 (961,208 operations, 2016-2022)' },
  ],
  sensitive: true,
};

const AGAINST_MODEL: FigureText = {
  name: 'rupture-observed-expected',
  label: 'Ruptures observed over expected by the model',
  method: 'observed count over the sum of expected risks; exact Poisson limits (Garwood 1936)',
  source: RISK_MODEL,
  cautions: [OLD_BASELINE],
  sensitive: true,
};
const AGAINST_OWN: FigureText = {
  name: 'rupture-observed-expected-own',
  label: "Ruptures observed over expected, model scaled to the set's own rate",
  method:
    'observed count over the sum of expected risks, every risk multiplied by observed over expected of the whole set',
  source: RISK_MODEL,
  cautions: ['Compares within this set only: the set as a whole is 1 by construction.'],
  sensitive: true,
};

/** An operation whose rupture and expected risk are both known. */
export interface RiskedCase extends MonitoredCase {
  readonly id: string;
  readonly date: string;
  readonly surgeon: string;
}

export function riskedCases(cases: readonly Case[], surgeonOf: (one: Case) => string): readonly RiskedCase[] {
  return cases.flatMap((one) => {
    const { id, date, rupture, ruptureRisk } = one.operation;
    if (rupture === null || ruptureRisk === null || date === null) return [];
    return [{ id, date, surgeon: surgeonOf(one), risk: ruptureRisk, event: rupture }];
  });
}

/** Observed over expected of the whole set: the factor that brings the model to the set's own rate. */
export function scaleOf(risked: readonly RiskedCase[]): number | null {
  const { ratio } = observedAgainstExpected(risked);
  return ratio === null || ratio === 0 ? null : ratio;
}

/** The same cases with every risk multiplied; a risk stays below 1. */
export function scaled(risked: readonly RiskedCase[], factor: number): readonly RiskedCase[] {
  return risked.map((one) => ({ ...one, risk: Math.min(0.99, one.risk * factor) }));
}

function ratioFigure(text: FigureText, group: Group, risked: readonly RiskedCase[], all: number): Figure {
  const { ratio, interval, observed, n } = observedAgainstExpected(risked);
  return figure(text, group, {
    value: ratio,
    n,
    missing: all - n,
    count: observed,
    interval: interval && { ...interval, level: 0.95, method: 'exact Poisson' },
  });
}

/** Rate, and observed over expected both ways, of a group. */
export function ruptures(
  { group, cases: all }: CaseGroup,
  surgeonOf: (one: Case) => string,
  scale: number | null,
): readonly Figure[] {
  const cases = all.filter(({ operation }) => operation.naturalLens);
  const risked = riskedCases(cases, surgeonOf);
  return [
    shareOf(RATE, group, cases, (one) => one.operation.rupture),
    ratioFigure(AGAINST_MODEL, group, risked, cases.length),
    ...(scale === null ? [] : [ratioFigure(AGAINST_OWN, group, scaled(risked, scale), cases.length)]),
  ];
}
