import { footNotes, frame, headline, WIDTH } from './frame.ts';
import type { Picture, PictureOptions } from './frame.ts';
import { Groups } from './group.ts';
import { sampleLine } from './lens-parts.ts';
import { listParts } from './list.ts';
import type { Part } from './part.ts';
import type { AstigmatismVector, AstigmatismVectors } from './scene.ts';
import { element, lineBetween, lineTo, moveTo, plain, pointAt } from './svg.ts';
import type { Attributes, Point } from './svg.ts';
import { meridianDegrees } from './words.ts';

const CENTRE = { x: WIDTH / 2, y: 400 };
const RADIUS = 300;
const LIST_TOP = 790;
const CAUTIONS = [
  'Double-angle plot: angles are doubled in the drawing and written as the meridians they stand for, so that 180 and 0 ' +
    'meet. An aid: check against the print-out.',
];

const KINDS = {
  before: { name: 'Before operation', colour: 'meridian', dash: undefined, shape: circle },
  expected: { name: 'Expected after operation', colour: 'ring', dash: '10 6', shape: square },
  achieved: { name: 'Achieved', colour: 'capsule', dash: '3 5', shape: diamond },
} as const;

type Kind = keyof typeof KINDS;

/** Corneal astigmatism before, expected and achieved, each an arrow from no astigmatism, told apart by shape and dash. */
export function drawAstigmatism(vectors: AstigmatismVectors, options: PictureOptions = {}): Picture {
  const prefix = options.idPrefix ?? 'sideport-astigmatism-';
  const kinds: readonly Kind[] = ['before', 'expected', 'achieved'];
  const full = fullScale(kinds.map((kind) => vectors[kind]?.magnitude ?? 0));
  const parts = kinds.flatMap((kind) => {
    const vector = vectors[kind];
    return vector === undefined ? [] : [vectorPart(kind, vector, full)];
  });
  const missing = kinds.filter((kind) => vectors[kind] === undefined).map((kind) => MISSING[kind]);
  const missingSentence = missing.length === 0 ? '' : `Not known: ${missing.join('; ')}.`;
  const title = 'Corneal astigmatism, double-angle plot';
  const groups = new Groups(prefix, options.clickable ?? false, options.emphasis);
  const list = listParts(parts, { x: 40, y: 90 }, LIST_TOP, groups);
  const notes = footNotes(missingSentence, CAUTIONS, list.bottom + 14);
  const description = [`${title}.`, ...parts.map((part, index) => `${index + 1}. ${part.words}.`), missingSentence]
    .join(' ')
    .trim();
  const content = headline(title) + element('g', { 'aria-hidden': 'true' }, grid(full)) + list.svg + notes.svg;
  return {
    title,
    description,
    missing,
    marks: groups.marks,
    svg: frame({ prefix, title, description, height: notes.bottom, options }, content),
  };
}

const MISSING: Readonly<Record<Kind, string>> = {
  before: 'astigmatism before the operation',
  expected: 'expected astigmatism',
  achieved: 'achieved astigmatism',
};

/** The outermost ring: the smallest of these that holds every vector. */
function fullScale(magnitudes: readonly number[]): number {
  const largest = Math.max(...magnitudes);
  return [1, 1.5, 2, 3, 4, 6, 8, 12, 20].find((scale) => scale >= largest) ?? Math.ceil(largest);
}

function vectorPart(kind: Kind, vector: AstigmatismVector, full: number): Part {
  const { name, colour, dash, shape } = KINDS[kind];
  const at = place(vector, full);
  const line: Attributes = { class: `sp-line sp-${colour}-line`, 'stroke-dasharray': dash };
  const size = `${vector.magnitude.toFixed(2)} D`;
  const outward = (by: number) => pointAt(at, by, vector.meridian === null ? 0 : vector.meridian * 2);
  return {
    words: `${name}: ${vector.meridian === null ? `${size}, no meridian` : `${size} @ ${meridianDegrees(Math.round(vector.meridian))}`}`,
    from: vector,
    mark: lineBetween(CENTRE, at, line) + shape(at, colour),
    sample: (point) => sampleLine(point, line) + shape({ x: point.x + 22, y: point.y }, colour),
    spots: [outward(32), outward(66), pointAt(at, 32, 90), pointAt(at, 32, 270)],
    incomplete: false,
  };
}

function place({ magnitude, meridian }: AstigmatismVector, full: number): Point {
  return pointAt(CENTRE, (magnitude / full) * RADIUS, (meridian ?? 0) * 2);
}

function grid(full: number): string {
  const rings = [0.25, 0.5, 0.75, 1].map((share) =>
    element('circle', { cx: CENTRE.x, cy: CENTRE.y, r: share * RADIUS, class: 'sp-dial', 'stroke-width': 1.5 }),
  );
  const sizes = [0.5, 1].map((share) => {
    const at = pointAt(CENTRE, share * RADIUS - 6, 8);
    return words(at, `${String(full * share)} D`, 'end', 'sp-faint-words');
  });
  const spokes = Array.from({ length: 12 }, (_, index) => index * 15).map((meridian) => {
    const end = pointAt(CENTRE, RADIUS, meridian * 2);
    const at = pointAt(CENTRE, RADIUS + 30, meridian * 2);
    return (
      lineBetween(CENTRE, end, { class: 'sp-dial', 'stroke-width': 1 }) +
      words({ x: at.x, y: at.y }, meridianDegrees(meridian), 'middle', 'sp-words')
    );
  });
  return [...rings, ...spokes, ...sizes].join('');
}

function words(at: Point, text: string, anchor: 'end' | 'middle', style: string): string {
  return element('text', { x: at.x, y: at.y + 7, class: style, 'font-size': 20, 'text-anchor': anchor }, plain(text));
}

function circle(at: Point, colour: string): string {
  return element('circle', { cx: at.x, cy: at.y, r: 9, class: `sp-${colour}-fill sp-solid` });
}

function square(at: Point, colour: string): string {
  return element('rect', { x: at.x - 9, y: at.y - 9, width: 18, height: 18, class: `sp-${colour}-fill sp-solid` });
}

function diamond(at: Point, colour: string): string {
  const corner = (angle: number) => pointAt(at, 12, angle);
  const d = `${moveTo(corner(0))} ${lineTo(corner(90))} ${lineTo(corner(180))} ${lineTo(corner(270))} Z`;
  return element('path', { d, class: `sp-${colour}-fill sp-solid` });
}
