import { exactFunnelLimits } from '../../statistics/funnel.ts';
import type { AuditPlots } from '../audit.ts';
import { drawPlot, label, mark, polyline, ticksBetween, type Place } from './frame.ts';

const LEVELS = [
  { level: 0.95, dash: '6 4', name: '95 %' },
  { level: 0.998, dash: '2 3', name: '99.8 %' },
] as const;
const STEPS = 60;

/** Case-mix adjusted rupture rate of each surgeon against the number of operations, with exact binomial limits. */
export function funnelPlot({ overallRate, points }: NonNullable<AuditPlots['funnel']>): string {
  const most = Math.max(50, ...points.map((point) => point.n)) * 1.1;
  const sizes = Array.from({ length: STEPS }, (_, i) => Math.round(10 + ((most - 10) * i) / (STEPS - 1)));
  const limits = LEVELS.map(({ level }) => sizes.map((n) => exactFunnelLimits(overallRate, n, level)));
  const highest = Math.max(6 * overallRate, ...points.map((point) => point.adjustedRate)) * 1.1;
  const line = (place: Place, at: number, dash: string): string[] => {
    const curve = limits[at] ?? [];
    const path = (end: 'low' | 'high'): string =>
      polyline(
        curve.flatMap((limit, i) => (limit[end] > highest ? [] : [place(sizes[i] ?? 0, limit[end])])),
        { 'stroke-dasharray': dash },
      );
    return [path('low'), path('high')];
  };
  return drawPlot(
    {
      title: 'Funnel plot: rupture rate adjusted for case mix against number of operations, by surgeon',
      x: { from: 0, to: most, ticks: ticksBetween(0, most), label: 'operations with known state and expected risk' },
      y: {
        from: 0,
        to: highest,
        ticks: ticksBetween(0, highest),
        label: 'adjusted rate',
        write: (tick) => `${Number((100 * tick).toFixed(2))} %`,
      },
    },
    (place) => [
      polyline([place(0, overallRate), place(most, overallRate)]),
      label(place(most, overallRate), 'whole set'),
      ...LEVELS.flatMap(({ dash, name }, at) => {
        const end = limits[at]?.at(-1)?.high ?? 0;
        return [...line(place, at, dash), label(place(most, end), name)];
      }),
      ...points.flatMap((point, index) => {
        const at = place(point.n, point.adjustedRate);
        return [mark(at, index), label({ x: at.x, y: at.y - 14 }, point.surgeon, 'middle')];
      }),
    ],
  );
}
