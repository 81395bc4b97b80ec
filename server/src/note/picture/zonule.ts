import type { Part } from './part.ts';
import type { Scene } from './scene.ts';
import { arc, element, lineTo, moveTo, pointAt } from './svg.ts';
import type { Attributes, Point } from './svg.ts';
import { SCALE } from './view.ts';
import type { View } from './view.ts';
import { zonuleWords } from './capsule-words.ts';

/** About where the zonule meets the capsule: the adult lens measures between nine and ten millimetres across. */
const EQUATOR = 4.75;
const TOOTH = 0.35;
const NUMBER_AT = 4;
const LINE: Attributes = { class: 'sp-line sp-open sp-ink-line' };
const DEGREES_PER_HOUR = 30;
/** Between two fibres of the comb. */
const STEP = 7.5;

/** A defect of the zonule: an arc with torn fibres standing off it. An intact zonule, and one that is gone, are not shown. */
export function zonulePart(scene: Scene, view: View): Part | undefined {
  const { zonule } = scene;
  if (zonule === undefined || zonule.state === 'intact' || zonule.state === 'absent') return undefined;
  const { state, hours, middle } = zonule;
  const extent = state === 'ruptured' ? hours : undefined;
  const isAllRound = extent !== undefined && extent >= 12;
  const place = middle ?? (isAllRound ? 270 : undefined);
  return {
    words: zonuleWords(zonule, scene.eye?.side),
    from: zonule,
    mark: place === undefined ? '' : mark(view, place, extent),
    sample: (at) => comb(sampleTeeth(at), `${moveTo({ x: at.x - 22, y: at.y + 6 })} h 44`),
    spots: place === undefined ? [] : [0, 14, -14].map((aside) => view.at(place + aside, NUMBER_AT)),
    incomplete: state === 'ruptured' && (hours === undefined || place === undefined),
  };
}

/** Without an extent a single broken fibre marks the place. */
function mark(view: View, middle: number, hours: number | undefined): string {
  if (hours === undefined) {
    const fibre = tooth(view, middle);
    return element('path', { d: fibre, ...LINE, 'stroke-dasharray': '4 4' });
  }
  const half = Math.min(180, (hours * DEGREES_PER_HOUR) / 2);
  const fibres = Math.max(1, Math.round((2 * half) / STEP));
  const teeth = Array.from({ length: fibres + 1 }, (_, index) =>
    tooth(view, middle - half + (2 * half * index) / fibres),
  );
  return comb(teeth.join(' '), edge(view, middle, half));
}

/** In two arcs, because SVG draws none whose ends meet. */
function edge(view: View, middle: number, half: number): string {
  const { centre } = view;
  const radius = EQUATOR * SCALE;
  const [from, to, at] = [view.angle(middle) - half, view.angle(middle) + half, view.angle(middle)];
  return `${moveTo(pointAt(centre, radius, from))} ${arc(centre, radius, from, at)} ${arc(centre, radius, at, to)}`;
}

function tooth(view: View, position: number): string {
  return `${moveTo(view.at(position, EQUATOR))} ${lineTo(view.at(position, EQUATOR + TOOTH))}`;
}

function sampleTeeth(at: Point): string {
  return [-22, -11, 0, 11, 22].map((aside) => `${moveTo({ x: at.x + aside, y: at.y + 6 })} v -12`).join(' ');
}

function comb(teeth: string, line: string): string {
  return element('path', { d: `${line} ${teeth}`, ...LINE });
}
