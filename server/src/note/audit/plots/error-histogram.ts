import { element } from '../../picture/svg.ts';
import { groupBy } from '../group-by.ts';
import { drawPlot, polyline, ticksBetween } from './frame.ts';

const STEP_D = 0.25;
const REACH_D = 2.5;

/** Prediction errors in quarter-dioptre bars; what lies beyond 2.5 D stands in the outermost bars. */
export function errorHistogram(errors: readonly number[]): string {
  // A bar is centred on a multiple of the step, so that nothing falls on an edge by rounding to quarters.
  const bins = groupBy(errors, (error) =>
    String(Math.round(Math.max(-REACH_D, Math.min(REACH_D, error)) / STEP_D) * STEP_D + 0),
  ).map(([centre, members]) => ({ centre: Number(centre), count: members.length }));
  const highest = Math.max(1, ...bins.map((bin) => bin.count)) * 1.05;
  const whole = [-2, -1, 0, 1, 2];
  return drawPlot(
    {
      title: 'Prediction errors: number of eyes by quarter dioptre',
      x: {
        from: -REACH_D - STEP_D,
        to: REACH_D + STEP_D,
        ticks: whole,
        label: 'achieved minus predicted, D (minus = more myopic)',
        write: (tick) => (tick > 0 ? `+${tick}` : String(tick)),
      },
      y: { from: 0, to: highest, ticks: ticksBetween(0, highest), label: 'eyes' },
    },
    (place) => [
      ...bins.map(({ centre, count }) => {
        const from = place(centre - STEP_D / 2, count);
        const to = place(centre + STEP_D / 2, 0);
        return element('rect', {
          x: from.x + 0.5,
          y: from.y,
          width: to.x - from.x - 1,
          height: to.y - from.y,
          class: 'bar',
        });
      }),
      polyline([place(0, 0), place(0, highest)], { 'stroke-dasharray': '2 3' }),
    ],
  );
}
