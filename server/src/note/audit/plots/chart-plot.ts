import { STEINER_THRESHOLD } from '../../statistics/risk-adjusted-cusum.ts';
import type { SurgeonChart } from '../stand-out.ts';
import { drawPlot, endLabels, mark, polyline, ticksBetween } from './frame.ts';

/** Risk-adjusted cumulative sum of one surgeon over consecutive operations, both risks in one plot. */
export function chartPlot(surgeon: string, charts: readonly SurgeonChart[]): string {
  const longest = Math.max(1, ...charts.map(({ chart }) => chart.path.length));
  const top = Math.max(STEINER_THRESHOLD * 1.15, ...charts.flatMap(({ chart }) => chart.path));
  return drawPlot(
    {
      title: `Risk-adjusted cumulative chart of surgeon ${surgeon} over consecutive operations`,
      x: { from: 0, to: longest, ticks: ticksBetween(0, longest), label: 'operations in order of time' },
      y: { from: 0, to: top, ticks: ticksBetween(0, top), label: 'height' },
      height: 240,
    },
    (place) => [
      polyline([place(0, STEINER_THRESHOLD), place(longest, STEINER_THRESHOLD)], { 'stroke-dasharray': '2 3' }),
      ...charts.flatMap(({ risk, chart }) => [
        polyline(
          chart.path.map((height, i) => place(i + 1, height)),
          risk === 'model' ? {} : { 'stroke-dasharray': '6 4' },
        ),
        ...chart.signals.map((at) => mark(place(at + 1, chart.path[at] ?? 0), risk === 'model' ? 0 : 1)),
      ]),
      ...endLabels([
        { at: place(longest, STEINER_THRESHOLD), text: 'threshold' },
        ...charts.map(({ risk, chart }) => ({
          at: place(longest, chart.path.at(-1) ?? 0),
          text: risk === 'model' ? 'model' : 'own rate (dashed)',
        })),
      ]),
    ],
  );
}
