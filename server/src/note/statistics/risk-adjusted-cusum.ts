/** One case for the chart: its expected risk (0 to 1) and whether the event happened. */
export interface MonitoredCase {
  readonly risk: number;
  readonly event: boolean;
}

/** What the chart looks for: odds multiplied by `oddsRatio` against odds multiplied by `acceptable`. */
export interface CusumDesign {
  readonly oddsRatio: number;
  readonly acceptable?: number;
  /** The chart signals when it reaches this height. The height sets the false alarm rate: choose it locally. */
  readonly threshold?: number;
}

export interface CusumChart {
  /** Height after each case. */
  readonly path: readonly number[];
  /** Indices of the cases at which the chart reached the threshold; it starts again from 0 after each. */
  readonly signals: readonly number[];
}

/** The height of 4.5 for doubled odds: Steiner et al. 2000 (from memory of the paper). */
export const STEINER_THRESHOLD = 4.5;

/**
 * Weight of one case in the risk-adjusted cumulative sum.
 * Source: Steiner, Cook, Farewell, Treasure, Biostatistics 2000;1:441-52, equation for W_t.
 */
export function cusumWeight(one: MonitoredCase, design: CusumDesign): number {
  const acceptable = design.acceptable ?? 1;
  const { risk, event } = one;
  const likelihood = (1 - risk + acceptable * risk) / (1 - risk + design.oddsRatio * risk);
  return Math.log(event ? (likelihood * design.oddsRatio) / acceptable : likelihood);
}

/** The chart X_t = max(0, X_(t-1) + W_t) over cases in order of time. */
export function cusumChart(cases: readonly MonitoredCase[], design: CusumDesign): CusumChart {
  const threshold = design.threshold ?? STEINER_THRESHOLD;
  const path: number[] = [];
  const signals: number[] = [];
  let height = 0;
  cases.forEach((one, index) => {
    height = Math.max(0, height + cusumWeight(one, design));
    path.push(height);
    if (height >= threshold) {
      signals.push(index);
      height = 0;
    }
  });
  return { path, signals };
}
