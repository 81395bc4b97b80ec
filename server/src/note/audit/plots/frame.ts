import { element, plain, type Point } from '../../picture/svg.ts';

/** One axis of a plot, in the units of the data. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  readonly label: string;
  /** How a tick is written; the number itself when left out. */
  readonly write?: (tick: number) => string;
}

export interface Frame {
  /** Says what the plot shows, for those who do not see it. */
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly width?: number;
  readonly height?: number;
}

/** Turns data into places of the drawing. */
export type Place = (x: number, y: number) => Point;

const MARGIN = { left: 62, right: 110, top: 14, bottom: 46 } as const;
const TICK = 5;

/** Round steps that cut a range into about five parts. */
export function ticksBetween(from: number, to: number): readonly number[] {
  const raw = (to - from) / 5;
  if (!(raw > 0)) return [from];
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 2.5, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= raw) ?? raw;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

const words = (at: Point, text: string, anchor: string, extra: Readonly<Record<string, string>> = {}): string =>
  element('text', { x: at.x, y: at.y, 'text-anchor': anchor, ...extra }, plain(text));

/** A line through points of the data. */
export function polyline(points: readonly Point[], attributes: Readonly<Record<string, string>> = {}): string {
  const list = points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  return element('polyline', { points: list, class: 'line', ...attributes });
}

/** Words beside a point. */
export function label(at: Point, text: string, anchor = 'start'): string {
  return words({ x: at.x + (anchor === 'start' ? 7 : 0), y: at.y + 4 }, text, anchor);
}

const LINE_HEIGHT = 13;

/** Words beside the ends of lines, moved apart so that none covers another. */
export function endLabels(ends: readonly { readonly at: Point; readonly text: string }[]): readonly string[] {
  let lowest = -Infinity;
  return ends
    .toSorted((a, b) => a.at.y - b.at.y)
    .map(({ at, text }) => {
      lowest = Math.max(at.y, lowest + LINE_HEIGHT);
      return label({ x: at.x, y: lowest }, text);
    });
}

const SHAPES: readonly ((p: Point) => string)[] = [
  ({ x, y }) => element('circle', { cx: x, cy: y, r: 4.5, class: 'mark' }),
  ({ x, y }) => element('rect', { x: x - 4, y: y - 4, width: 8, height: 8, class: 'mark' }),
  ({ x, y }) => element('path', { d: `M ${x.toFixed(1)} ${(y - 5).toFixed(1)} l 5 9 l -10 0 z`, class: 'mark' }),
  ({ x, y }) => element('path', { d: `M ${x.toFixed(1)} ${(y - 6).toFixed(1)} l 6 6 l -6 6 l -6 -6 z`, class: 'mark' }),
];

/** A mark whose shape, not its colour, tells the groups apart. */
export function mark(at: Point, index: number): string {
  const shape = SHAPES[index % SHAPES.length];
  return shape === undefined ? '' : shape(at);
}

/** A plot as SVG: axes, ticks, labels, and what is drawn inside. Plain lines, readable without colour. */
export function drawPlot(frame: Frame, draw: (place: Place) => readonly string[]): string {
  const { title, x, y, width = 640, height = 320 } = frame;
  const inner = {
    left: MARGIN.left,
    right: width - MARGIN.right,
    top: MARGIN.top,
    bottom: height - MARGIN.bottom,
  };
  const place: Place = (dataX, dataY) => ({
    x: inner.left + ((dataX - x.from) / (x.to - x.from || 1)) * (inner.right - inner.left),
    y: inner.bottom - ((dataY - y.from) / (y.to - y.from || 1)) * (inner.bottom - inner.top),
  });
  const xTicks = x.ticks.map((tick) => {
    const at = place(tick, y.from);
    const line = element('line', { x1: at.x, y1: inner.bottom, x2: at.x, y2: inner.bottom + TICK, class: 'axis' });
    return line + words({ x: at.x, y: inner.bottom + 18 }, x.write?.(tick) ?? String(tick), 'middle');
  });
  const yTicks = y.ticks.map((tick) => {
    const at = place(x.from, tick);
    const line = element('line', { x1: inner.left - TICK, y1: at.y, x2: inner.left, y2: at.y, class: 'axis' });
    return line + words({ x: inner.left - 8, y: at.y + 4 }, y.write?.(tick) ?? String(tick), 'end');
  });
  const middle = { x: (inner.left + inner.right) / 2, y: (inner.top + inner.bottom) / 2 };
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': title,
      class: 'plot',
    },
    element('title', {}, plain(title)),
    polyline(
      [
        { x: inner.left, y: inner.top },
        { x: inner.left, y: inner.bottom },
        { x: inner.right, y: inner.bottom },
      ],
      { class: 'axis' },
    ),
    ...xTicks,
    ...yTicks,
    words({ x: middle.x, y: height - 8 }, x.label, 'middle'),
    words({ x: 14, y: middle.y }, y.label, 'middle', { transform: `rotate(-90 14 ${middle.y})` }),
    ...draw(place),
  );
}
