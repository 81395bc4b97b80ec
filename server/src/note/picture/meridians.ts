import { sampleLine } from './lens-parts.ts';
import type { Part } from './part.ts';
import type { Scene } from './scene.ts';
import { element, lineBetween, lineTo, moveTo, pointAt } from './svg.ts';
import type { Attributes, Point } from './svg.ts';
import { SCALE } from './view.ts';
import type { View } from './view.ts';
import { foundAxisWords, meridianDegrees } from './words.ts';

const STEEP: Attributes = { class: 'sp-line sp-meridian-line', 'stroke-dasharray': '22 8' };
const AIMED: Attributes = { class: 'sp-line sp-lens-line', 'stroke-dasharray': '14 5 2 5' };
const FOUND: Attributes = { class: 'sp-line sp-ink-line' };
/** Numbers stand beside their line, by so many degrees, so that the other line does not cross them. */
const BESIDE = 20;
/** Where the marks stand while the optic's diameter is not recorded, in mm. */
const USUAL_OPTIC = 6;

/** The steep corneal meridian: a long-dashed line with arrow heads at the limbus. */
export function steepPart(scene: Scene, view: View): Part | undefined {
  const steep = scene.steepMeridian;
  if (steep === undefined) return undefined;
  const reach = view.limbus - 0.5 * SCALE;
  const ends = endsOf(view, view.centre, steep.meridian, reach);
  return {
    words: `Steep corneal meridian: ${meridianDegrees(steep.meridian)}`,
    from: steep,
    mark: between(ends, STEEP) + ends.map((end) => arrow(end.point, end.angle)).join(''),
    sample: (at) => sampleLine(at, STEEP) + arrow({ x: at.x + 22, y: at.y }, 0),
    spots: [0.8, 1.6].flatMap((in_) => pointsAt(view, view.centre, steep.meridian, reach - in_ * SCALE)),
    incomplete: false,
  };
}

/** Toric marks on the edge of the optic: aimed ends in open circles, found ends in filled squares. */
export function axisParts(scene: Scene, view: View): readonly Part[] {
  const { aimedAxis, foundAxis, optic } = scene;
  const edge = ((optic?.diameter ?? USUAL_OPTIC) / 2) * SCALE;
  const centre = view.centreOf(optic);
  const parts: Part[] = [];
  if (aimedAxis !== undefined) {
    const ends = pointsAt(view, centre, aimedAxis.axis, edge);
    parts.push({
      words: `Toric axis aimed: ${meridianDegrees(aimedAxis.axis)}`,
      from: aimedAxis,
      mark: between(endsOf(view, centre, aimedAxis.axis, edge), AIMED) + ends.map(openCircle).join(''),
      sample: (at) => sampleLine(at, AIMED) + openCircle({ x: at.x + 22, y: at.y }),
      spots: pointsAt(view, centre, aimedAxis.axis - BESIDE, 1.9 * SCALE),
      incomplete: foundAxis === undefined,
    });
  }
  if (foundAxis !== undefined) {
    const ends = pointsAt(view, centre, foundAxis.axis, edge);
    parts.push({
      words: foundAxisWords(foundAxis.axis, aimedAxis?.axis),
      from: foundAxis,
      mark: between(endsOf(view, centre, foundAxis.axis, edge), FOUND) + ends.map(filledSquare).join(''),
      sample: (at) => sampleLine(at, FOUND) + filledSquare({ x: at.x + 22, y: at.y }),
      spots: pointsAt(view, centre, foundAxis.axis + BESIDE, 1.9 * SCALE),
      incomplete: aimedAxis === undefined,
    });
  }
  return parts;
}

interface End {
  readonly point: Point;
  readonly angle: number;
}

function endsOf(view: View, centre: Point, meridian: number, reach: number): readonly [End, End] {
  const end = (position: number): End => {
    const angle = view.angle(position);
    return { point: pointAt(centre, reach, angle), angle };
  };
  return [end(meridian), end(meridian + 180)];
}

function pointsAt(view: View, centre: Point, meridian: number, reach: number): readonly Point[] {
  return endsOf(view, centre, meridian, reach).map((end) => end.point);
}

function between([one, other]: readonly [End, End], attributes: Attributes): string {
  return lineBetween(one.point, other.point, attributes);
}

function openCircle(at: Point): string {
  return element('circle', { cx: at.x, cy: at.y, r: 11, class: 'sp-line sp-lens-line sp-tag' });
}

function filledSquare(at: Point): string {
  return element('rect', { x: at.x - 6, y: at.y - 6, width: 12, height: 12, class: 'sp-ink-fill sp-solid' });
}

function arrow(tip: Point, angle: number): string {
  const side = (by: number) => pointAt(tip, 18, angle + by);
  const d = `${moveTo(tip)} ${lineTo(side(155))} ${lineTo(side(205))} Z`;
  return element('path', { d, class: 'sp-meridian-fill sp-solid' });
}
