import { siteAt } from '../calculations/position/site.ts';
import { clockHour } from './dial.ts';
import type { Scene } from './scene.ts';
import { element, lineBetween, plain, short } from './svg.ts';
import { SCALE } from './view.ts';
import type { View } from './view.ts';

const TICKS_AT = 6.95;
const DEGREES_AT = 7.95;
const HOURS_AT = 9.15;
const SITES_AT = 9.95;

/** The limbus and the dial about it: degrees, anatomical clock hours, and the four sides written out. */
export function dialFace(scene: Scene, view: View): string {
  const { centre } = view;
  const limbus = element('circle', {
    cx: centre.x,
    cy: centre.y,
    r: view.limbus,
    class: 'sp-eye',
    'stroke-width': 2,
    'stroke-dasharray': scene.limbus === undefined ? '10 6' : undefined,
  });
  const ticks = every(10).map((position) =>
    lineBetween(view.at(position, TICKS_AT), view.at(position, TICKS_AT + (position % 30 === 0 ? 0.4 : 0.2)), {
      class: 'sp-dial',
      'stroke-width': 1.5,
    }),
  );
  const degreeLabels = every(30).map((position) => label(view, position, DEGREES_AT, `${position}°`, 'sp-words'));
  const hourLabels = every(30).map((position) =>
    label(view, position, HOURS_AT, `${clockHour(position)} h`, 'sp-faint-words'),
  );
  const side = scene.eye?.side;
  const sides = every(90).map((position) => {
    if (side === undefined && position % 180 === 0) return sideLabel(view, position, 'side not known');
    return sideLabel(view, position, siteAt(position, side ?? 'right'));
  });
  return [limbus, ...ticks, ...degreeLabels, ...hourLabels, ...sides].join('');
}

function every(step: number): readonly number[] {
  return Array.from({ length: 360 / step }, (_, index) => index * step);
}

function label(view: View, position: number, at: number, words: string, style: string): string {
  const point = view.at(position, at);
  return element(
    'text',
    { x: point.x, y: point.y + 6, class: style, 'font-size': 18, 'text-anchor': 'middle' },
    plain(words),
  );
}

/** Written along the dial, and never upside down. */
function sideLabel(view: View, position: number, words: string): string {
  const point = view.at(position, SITES_AT);
  const along = 90 - view.angle(position);
  const upright = along < -90 || along > 90 ? along + 180 : along;
  return element(
    'text',
    {
      x: point.x,
      y: point.y,
      dy: 7,
      class: 'sp-words',
      'font-size': 22,
      'font-weight': 600,
      'text-anchor': 'middle',
      transform: `rotate(${short(upright)} ${short(point.x)} ${short(point.y)})`,
    },
    plain(words),
  );
}

/** One millimetre, so that a print at any size can be measured. */
export function scaleBar(at: { x: number; y: number }): string {
  const line = `M ${at.x} ${at.y - 6} v 12 M ${at.x} ${at.y} h ${SCALE} m 0 -6 v 12`;
  return (
    element('path', { d: line, class: 'sp-eye', 'stroke-width': 2 }) +
    element(
      'text',
      { x: at.x + SCALE / 2, y: at.y - 12, class: 'sp-words', 'font-size': 18, 'text-anchor': 'middle' },
      '1 mm',
    )
  );
}
