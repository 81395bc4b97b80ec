import { dialFace, scaleBar } from './dial-face.ts';
import { siteAt } from '../calculations/position/site.ts';
import { footNotes, frame, headline, WIDTH } from './frame.ts';
import type { Picture, PictureOptions } from './frame.ts';
import { Groups } from './group.ts';
import { incisionPart } from './incisions.ts';
import { capsulotomyPart, opticPart, ringPart } from './lens-parts.ts';
import { listParts } from './list.ts';
import { axisParts, steepPart } from './meridians.ts';
import type { Part } from './part.ts';
import { saidParts } from './said-parts.ts';
import type { Scene } from './scene.ts';
import { element, plain } from './svg.ts';
import { viewFrom } from './view.ts';
import type { View } from './view.ts';
import { missingWords } from './missing-words.ts';
import { degrees } from './words.ts';
import { zonulePart } from './zonule.ts';

const CENTRE = { x: WIDTH / 2, y: 470 };
const SEAT_TOP = 884;
const LIST_TOP = 950;
const CAUTIONS = [
  'Drawn from the note at true size, not as magnified by the cornea; clock hours are anatomical (12 h superior). ' +
    'An aid: check against the eye, the lens box and the print-out.',
];

/** The eye as the surgeon sees it from the recorded seat, to scale, as SVG text with every part also in words. */
export function drawEye(scene: Scene, options: PictureOptions = {}): Picture {
  const prefix = options.idPrefix ?? 'sideport-eye-';
  const groups = new Groups(prefix, options.clickable ?? false, options.emphasis);
  const view = viewFrom(CENTRE, scene.seat?.position, scene.limbus?.diameter);
  const parts = partsOf(scene, view, prefix);
  const missing = missingWords(scene);
  const missingSentence = missing.length === 0 ? '' : `Not recorded: ${missing.join('; ')}.`;
  const title = titleOf(scene);
  const head = groups.draw(title, scene.eye, headline(title));
  const seat = groups.draw(seatWords(scene), scene.seat, seatMark(scene));
  const list = listParts(parts, { x: 40, y: 90 }, LIST_TOP, groups);
  const notes = footNotes(missingSentence, CAUTIONS, list.bottom + 14);
  const description = [`${title}.`, ...parts.map((part, index) => `${index + 1}. ${part.words}.`), missingSentence]
    .join(' ')
    .trim();
  const content = [
    head,
    element('g', { 'aria-hidden': 'true' }, dialFace(scene, view), scaleBar({ x: 740, y: 850 })),
    seat,
    list.svg,
    notes.svg,
  ];
  return {
    title,
    description,
    missing,
    marks: groups.marks,
    svg: frame({ prefix, title, description, height: notes.bottom, options }, content.join('')),
  };
}

function partsOf(scene: Scene, view: View, prefix: string): readonly Part[] {
  return [
    // First, so that no number of another part is crossed by it.
    zonulePart(scene, view),
    steepPart(scene, view),
    ...(scene.incisions ?? []).map((incision) => incisionPart(incision, view, scene.eye?.side, prefix)),
    capsulotomyPart(scene, view, prefix),
    ringPart(scene, view),
    opticPart(scene, view),
    ...axisParts(scene, view),
    ...saidParts(scene),
  ].filter((part) => part !== undefined);
}

function titleOf(scene: Scene): string {
  const eye = scene.eye === undefined ? 'Eye not recorded' : `${scene.eye.side === 'right' ? 'Right' : 'Left'} eye`;
  return `${eye}, ${scene.seat === undefined ? 'as a person facing it sees it' : 'as the surgeon sees it'}`;
}

function seatWords(scene: Scene): string {
  if (scene.seat === undefined) return "Surgeon's seat not recorded: superior is drawn at the top";
  const site = scene.eye === undefined ? '' : `${siteAt(scene.seat.position, scene.eye.side)}, `;
  return `The surgeon sits here: ${site}${degrees(scene.seat.position)}`;
}

/** The seat is always nearest to the reader: at the bottom. */
function seatMark(scene: Scene): string {
  const known = scene.seat !== undefined;
  const middle = WIDTH / 2;
  const bracket = `M 160 ${SEAT_TOP + 50} v -36 H ${middle - 22} l 22 -14 l 22 14 H ${WIDTH - 160} v 36`;
  return (
    element('rect', { x: 8, y: SEAT_TOP, width: WIDTH - 16, height: 58, rx: 4, class: 'sp-row' }) +
    element('path', {
      d: known ? bracket : `M 160 ${SEAT_TOP + 14} H ${WIDTH - 160}`,
      class: 'sp-line sp-open sp-ink-line',
      'stroke-dasharray': known ? undefined : '6 6',
    }) +
    element(
      'text',
      { x: middle, y: SEAT_TOP + 42, class: 'sp-words', 'font-size': 21, 'text-anchor': 'middle' },
      plain(seatWords(scene)),
    )
  );
}
