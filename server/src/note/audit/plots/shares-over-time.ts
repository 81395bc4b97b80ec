import type { Figure } from '../figure.ts';
import { drawPlot, endLabels, mark, polyline } from './frame.ts';

const PERCENT_TICKS = [0, 25, 50, 75, 100];

/** Shares of each period as a line; a period without a value leaves a gap in the points, not a zero. */
export function sharesOverTime(
  title: string,
  series: readonly { readonly name: string; readonly figures: readonly Figure[] }[],
): string {
  const periods = [
    ...new Set(series.flatMap(({ figures }) => figures.map((figure) => figure.group['period'] ?? ''))),
  ].toSorted();
  const last = Math.max(1, periods.length - 1);
  return drawPlot(
    {
      title,
      x: { from: 0, to: last, ticks: periods.map((_, i) => i), label: 'period', write: (tick) => periods[tick] ?? '' },
      y: { from: 0, to: 100, ticks: PERCENT_TICKS, label: '%' },
      height: 240,
    },
    (place) => {
      const lines = series.map(({ name, figures }) => ({
        name,
        points: figures.flatMap(({ value, group }) =>
          value === null ? [] : [place(periods.indexOf(group['period'] ?? ''), value)],
        ),
      }));
      return [
        ...lines.flatMap(({ points }, index) => [polyline(points), ...points.map((at) => mark(at, index))]),
        ...endLabels(lines.flatMap(({ name, points }) => points.slice(-1).map((at) => ({ at, text: name })))),
      ];
    },
  );
}
