import { asPosition } from '../angles.ts';
import { calculation } from '../calculation.ts';
import { angle, choice } from '../fields.ts';
import { found } from '../outcome.ts';
import type { Eye } from '../quantities.ts';
import { CITATIONS } from '../sources.ts';

/** The sites counter-clockwise from the right-hand horizontal of a viewer, for a right eye. */
const RIGHT_EYE = [
  'nasal',
  'superonasal',
  'superior',
  'superotemporal',
  'temporal',
  'inferotemporal',
  'inferior',
  'inferonasal',
] as const;

export type Site = (typeof RIGHT_EYE)[number];
export const SITES: readonly Site[] = RIGHT_EYE;
export const EYES: readonly Eye[] = ['right', 'left'];

/** A left eye is the mirror image: nasal is at 180 and temporal at 0. */
const mirrored = (step: number): number => (12 - step) % 8;

/** Dial position (degrees) of a site word. */
export function positionOf(site: Site, eye: Eye): number {
  const step = RIGHT_EYE.indexOf(site);
  return 45 * (eye === 'right' ? step : mirrored(step));
}

/** The site word of a dial position: the nearest of eight, 22.5 degrees to either side. */
export function siteAt(position: number, eye: Eye): Site {
  const step = Math.round(asPosition(position) / 45) % 8;
  return RIGHT_EYE[eye === 'right' ? step : mirrored(step)] ?? 'nasal';
}

const source = { citation: CITATIONS.iso8429, status: 'derived' } as const;

export const positionOfSite = calculation<{ site: Site; eye: Eye }, number>({
  name: 'position-of-site',
  topic: 'Position',
  definition: 'Dial position of a site word: 0 to 360, counter-clockwise, as seen by a person facing the eye.',
  inputs: { site: choice('site', SITES), eye: choice('eye', EYES) },
  unit: '°',
  domain: 'Right eye: nasal 0, temporal 180. Left eye: temporal 0, nasal 180. Superior is 90 in both.',
  method: 'the same dial for both eyes; the words mirror',
  source,
  example: { input: { site: 'superotemporal', eye: 'left' }, gives: 45 },
  compute: ({ site, eye }) => found(positionOf(site, eye)),
});

export const siteOfPosition = calculation<{ position: number; eye: Eye }, Site>({
  name: 'site-of-position',
  topic: 'Position',
  definition: 'The site word nearest to a dial position.',
  inputs: { position: angle('position'), eye: choice('eye', EYES) },
  unit: '',
  domain: 'Needs the position on the whole circle: a meridian cannot tell temporal from nasal.',
  method: 'nearest of eight words, 22.5 degrees to either side; a tie goes counter-clockwise',
  source: { citation: 'sectors of 45 degrees', status: 'common practice' },
  example: { input: { position: 120, eye: 'right' }, gives: 'superotemporal' },
  compute: ({ position, eye }) => found(siteAt(position, eye)),
});
