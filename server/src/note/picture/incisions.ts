import type { Part } from './part.ts';
import type { Incision, Side } from './scene.ts';
import { arc, element, lineBetween, lineTo, moveTo, pointAt } from './svg.ts';
import type { Point } from './svg.ts';
import { SCALE } from './view.ts';
import type { View } from './view.ts';
import { incisionWords } from './words.ts';

/** How far the mark reaches across the limbus; the width is to scale, this is not. */
const INWARD = 0.45 * SCALE;
const OUTWARD = 0.2 * SCALE;
/** How far from the middle a hook ends, in mm, and by how many degrees it is bent. */
const HOOK_END = 3.4;
const HOOK_BEND = 4;

/** An incision at the limbus: its recorded width is the chord. Kinds differ in filling, not only in colour. */
export function incisionPart(incision: Incision, view: View, side: Side | undefined, prefix: string): Part {
  const { position, width } = incision;
  return {
    words: incisionWords(incision, side),
    from: incision,
    mark:
      position === undefined
        ? ''
        : hook(incision, position, view) + mark(incision, view.angle(position), width, view, prefix),
    sample: (at) => element('rect', { x: at.x - 20, y: at.y - 9, width: 40, height: 18, ...filling(incision, prefix) }),
    spots: position === undefined ? [] : spots(view, position),
    incomplete: position === undefined || width === undefined,
  };
}

/** Inside the limbus beside the mark: straight in, then a little to either side. */
function spots(view: View, position: number): readonly Point[] {
  const limbus = view.limbus / SCALE;
  return [0, 14, -14].map((aside) => view.at(position + aside, limbus - 1.25)).concat(view.at(position, limbus - 2));
}

/** From the limbus to where a pupil lies, bent at its end. */
function hook({ hook: isHook }: Incision, position: number, view: View): string {
  if (isHook !== true) return '';
  const bend = view.at(position + HOOK_BEND, HOOK_END + 0.25);
  return hookLine([view.at(position, view.limbus / SCALE), view.at(position, HOOK_END), bend]);
}

export function hookSample(at: Point): string {
  return hookLine([at.x + 22, at.x - 22, at.x - 14].map((x, index) => ({ x, y: at.y - (index === 2 ? 8 : 0) })));
}

function hookLine(points: readonly Point[]): string {
  const d = points.map((point, index) => (index === 0 ? moveTo(point) : lineTo(point)));
  return element('path', { d: d.join(' '), class: 'sp-line sp-open sp-ink-line' });
}

function mark(incision: Incision, angle: number, width: number | undefined, view: View, prefix: string): string {
  const { centre, limbus } = view;
  if (width === undefined) {
    return lineBetween(pointAt(centre, limbus - INWARD, angle), pointAt(centre, limbus + OUTWARD, angle), {
      class: 'sp-line sp-incision-line',
      'stroke-dasharray': '4 4',
    });
  }
  const half = (Math.asin(Math.min(1, (width * SCALE) / 2 / limbus)) * 180) / Math.PI;
  const corner = (radius: number, at: number): Point => pointAt(centre, radius, at);
  const band = [
    moveTo(corner(limbus + OUTWARD, angle - half)),
    arc(centre, limbus + OUTWARD, angle - half, angle + half),
    lineTo(corner(limbus - INWARD, angle + half)),
    arc(centre, limbus - INWARD, angle + half, angle - half, true),
    'Z',
  ].join(' ');
  return element('path', { d: band, ...filling(incision, prefix) });
}

const PATTERNS = { 'side-port': 'stripes', other: 'grid' } as const;

function filling({ kind }: Incision, prefix: string): Record<string, string | number> {
  if (kind === 'main') return { class: 'sp-line sp-incision-line sp-incision-fill sp-solid' };
  if (kind === 'relaxing') return { class: 'sp-line sp-open sp-incision-line' };
  return { class: 'sp-line sp-incision-line', style: `fill:url(#${prefix}${PATTERNS[kind]})` };
}
