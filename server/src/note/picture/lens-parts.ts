import { capsulotomyWords, isRingThere, opticWords, ringWords } from './capsule-words.ts';
import { cover, type Cover } from './cover.ts';
import type { Part } from './part.ts';
import type { Scene } from './scene.ts';
import { arc, element, lineBetween, moveTo, pointAt } from './svg.ts';
import type { Attributes, Point } from './svg.ts';
import { SCALE } from './view.ts';
import type { View } from './view.ts';
import { coverWords } from './words.ts';

const CAPSULOTOMY: Attributes = { class: 'sp-line sp-open sp-capsule-line', 'stroke-dasharray': '9 5' };
const OPTIC: Attributes = { class: 'sp-line sp-open sp-lens-line' };
const RING: Attributes = {
  class: 'sp-line sp-open sp-ring-line',
  'stroke-dasharray': '0.1 8',
  'stroke-linecap': 'round',
  'stroke-width': 5,
};

/** An opening whose edge is broken: short strokes, far apart. */
const BROKEN: Attributes = { ...CAPSULOTOMY, 'stroke-dasharray': '5 11' };

/** The capsulotomy to scale, with the part of its edge that lies off the optic hatched. */
export function capsulotomyPart(scene: Scene, view: View, prefix: string): Part | undefined {
  const disc = scene.capsulotomy;
  if (disc === undefined) return undefined;
  const centre = view.centreOf(disc, view.centreOf(scene.optic));
  const radius = ((disc.diameter ?? 0) / 2) * SCALE;
  const line = disc.brokenRim === undefined ? CAPSULOTOMY : BROKEN;
  return {
    words: capsulotomyWords(disc, scene.eye?.side) + coverWords(coverIn(scene)),
    from: disc,
    mark: disc.diameter === undefined ? '' : uncovered(scene, view, prefix) + circle(centre, radius, line),
    sample: (at) => sampleLine(at, line),
    spots: disc.diameter === undefined ? [] : around(centre, radius, [130, 50, 230, 310]),
    incomplete: disc.diameter === undefined || typeof disc.offset?.distance !== 'number',
  };
}

export function opticPart(scene: Scene, view: View): Part | undefined {
  const disc = scene.optic;
  if (disc === undefined) return undefined;
  const centre = view.centreOf(disc);
  const radius = ((disc.diameter ?? 0) / 2) * SCALE;
  return {
    words: opticWords(disc, scene.eye?.side),
    from: disc,
    mark: disc.diameter === undefined ? '' : circle(centre, radius, OPTIC),
    sample: (at) => sampleLine(at, OPTIC),
    spots: disc.diameter === undefined ? [] : around(centre, radius + 12, [200, 340, 20, 160]),
    incomplete: disc.diameter === undefined,
  };
}

/** The ring lies open in the bag: a gap is drawn opposite the seat's side, without saying where it was. */
export function ringPart(scene: Scene, view: View): Part | undefined {
  const ring = scene.ring;
  if (ring === undefined) return undefined;
  const isThere = isRingThere(ring);
  const drawn = isThere && ring.diameter !== undefined;
  const radius = ((ring.diameter ?? 0) / 2) * SCALE;
  const path = `${moveTo(pointAt(view.centre, radius, 100))} ${arc(view.centre, radius, 100, 80)}`;
  return {
    words: ringWords(ring),
    from: ring,
    mark: drawn ? element('path', { d: path, ...RING }) : '',
    sample: (at) => (isThere ? sampleLine(at, RING) : ''),
    spots: drawn ? around(view.centre, radius, [250, 290, 215, 325]) : [],
    incomplete: isThere && ring.diameter === undefined,
  };
}

/** Only an unbroken rim covers an optic, and only one that lies behind it. */
function coverIn({ capsulotomy, optic }: Scene): Cover | undefined {
  return capsulotomy?.brokenRim === undefined && optic?.outOfBag !== true ? cover(capsulotomy, optic) : undefined;
}

function uncovered(scene: Scene, view: View, prefix: string): string {
  const { capsulotomy, optic } = scene;
  const how = coverIn(scene);
  if (how === undefined || how.kind === 'all round' || capsulotomy === undefined || optic === undefined) return '';
  const inner = view.centreOf(optic);
  const outer = view.centreOf(capsulotomy, inner);
  const outerRadius = ((capsulotomy.diameter ?? 0) / 2) * SCALE;
  const innerRadius = ((optic.diameter ?? 0) / 2) * SCALE;
  const style = { class: 'sp-line sp-missing-line', style: `fill:url(#${prefix}uncovered)`, 'fill-rule': 'evenodd' };
  if (how.kind === 'none') {
    return element('path', { d: `${wholeCircle(outer, outerRadius)} ${wholeCircle(inner, innerRadius)}`, ...style });
  }
  const middle = view.angle(how.toward);
  const start = middle - how.halfOnCapsulotomy;
  const d = [
    moveTo(pointAt(outer, outerRadius, start)),
    arc(outer, outerRadius, start, middle + how.halfOnCapsulotomy),
    arc(inner, innerRadius, middle + how.halfOnOptic, middle - how.halfOnOptic, true),
    'Z',
  ];
  return element('path', { d: d.join(' '), ...style });
}

function wholeCircle(centre: Point, radius: number): string {
  return `${moveTo(pointAt(centre, radius, 0))} ${arc(centre, radius, 0, 180)} ${arc(centre, radius, 180, 0)} Z`;
}

function circle(centre: Point, radius: number, attributes: Attributes): string {
  return element('circle', { cx: centre.x, cy: centre.y, r: radius, ...attributes });
}

function around(centre: Point, radius: number, angles: readonly number[]): readonly Point[] {
  return angles.map((angle) => pointAt(centre, radius, angle));
}

export function sampleLine(at: Point, attributes: Attributes): string {
  return lineBetween({ x: at.x - 22, y: at.y }, { x: at.x + 22, y: at.y }, attributes);
}
