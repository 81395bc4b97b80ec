import { WIDTH, wrap } from './frame.ts';
import type { Groups } from './group.ts';
import type { Part } from './part.ts';
import { element, plain } from './svg.ts';
import type { Point } from './svg.ts';

/** About what a line of the list holds at its letter size, in a usual sans-serif face. */
const LINE_HOLDS = 54;
const LINE_HEIGHT = 28;
const TAG_RADIUS = 15;
/** Numbers nearer than this cannot be told apart. */
const APART = 34;

/** Every part as one group: its mark in the drawing, its number, and its words in the list below. */
export function listParts(
  parts: readonly Part[],
  corner: Point,
  listTop: number,
  groups: Groups,
): { svg: string; bottom: number } {
  const taken: Point[] = [];
  let top = listTop;
  let waiting = 0;
  const drawn = parts.map((part, index) => {
    const free = part.spots.find((spot) =>
      taken.every((other) => Math.hypot(other.x - spot.x, other.y - spot.y) > APART),
    );
    // A part whose place is missing has its number in the corner; a crowded one takes its best place all the same.
    const at = free ?? part.spots[0] ?? (part.incomplete ? { x: corner.x + 44 * waiting++, y: corner.y } : undefined);
    if (at !== undefined) taken.push(at);
    const lines = wrap(part.words, LINE_HOLDS);
    const height = lines.length * LINE_HEIGHT + 8;
    const row = listRow(part, index + 1, lines, { top, height });
    top += height;
    return groups.draw(part.words, part.from, part.mark + (at === undefined ? '' : tag(part, index + 1, at)) + row);
  });
  return { svg: drawn.join(''), bottom: top };
}

function listRow(part: Part, number: number, lines: readonly string[], at: { top: number; height: number }): string {
  const middle = at.top + at.height / 2;
  return [
    element('rect', { x: 8, y: at.top + 1, width: WIDTH - 16, height: at.height - 2, rx: 4, class: 'sp-row' }),
    tag(part, number, { x: 36, y: middle }),
    element('g', { 'aria-hidden': 'true' }, part.sample({ x: 88, y: middle })),
    element(
      'text',
      { y: at.top + 4 - LINE_HEIGHT * 0.25, class: 'sp-words', 'font-size': 21 },
      // The blank between the lines belongs to the words, for who hears them.
      lines.map((line) => element('tspan', { x: 126, dy: LINE_HEIGHT }, plain(line))).join(' '),
    ),
  ].join('');
}

function tag(part: Part, number: number, at: Point): string {
  return element(
    'g',
    { 'aria-hidden': 'true' },
    element('circle', {
      cx: at.x,
      cy: at.y,
      r: TAG_RADIUS,
      class: 'sp-tag',
      'stroke-dasharray': part.incomplete ? '4 3' : undefined,
    }),
    element(
      'text',
      { x: at.x, y: at.y + 6, class: 'sp-tag-text', 'font-size': 17, 'text-anchor': 'middle' },
      `${number}${part.incomplete ? '?' : ''}`,
    ),
  );
}
