import { asPosition } from '../calculations/angles.ts';
import { siteAt } from '../calculations/position/site.ts';
import { clockHour } from './dial.ts';
import type { Cover } from './cover.ts';
import type { Incision, Side } from './scene.ts';

/** Lengths as a surgeon writes them: two decimals at most, one at least. */
export function millimetres(value: number): string {
  const written = value.toFixed(2);
  return `${written.endsWith('0') ? written.slice(0, -1) : written} mm`;
}

export function degrees(value: number): string {
  return `${Math.round(value * 10) / 10}°`;
}

/** A meridian or axis: 0 is written 180 (ISO 8429). */
export function meridianDegrees(value: number): string {
  const within = Math.round((value % 180) * 10) / 10;
  return `${within === 0 ? 180 : within}°`;
}

export function hours(position: number): string {
  const hour = clockHour(position);
  return `${Number.isInteger(hour) ? hour : `half past ${Math.floor(hour)}`}${Number.isInteger(hour) ? " o'clock" : ''}`;
}

/** "180° (9 o'clock, temporal)"; without the eye the side of the nose is not known and no site word is written. */
export function placeWords(position: number, side: Side | undefined): string {
  const site = side === undefined ? '' : `, ${siteAt(position, side)}`;
  return `${degrees(asPosition(position))} (${hours(position)}${site})`;
}

const INCISION_NAMES = {
  main: 'Main incision',
  'side-port': 'Side-port incision',
  relaxing: 'Relaxing incision',
  other: 'Other incision',
} as const;

export const incisionName = ({ kind, hook }: Incision): string =>
  hook === true && kind === 'other' ? 'Hook incision' : INCISION_NAMES[kind];

export function incisionWords(incision: Incision, side: Side | undefined): string {
  const width = incision.width === undefined ? 'width not recorded' : `${millimetres(incision.width)} wide`;
  const place = incision.position === undefined ? 'place not recorded' : `at ${placeWords(incision.position, side)}`;
  return `${incisionName(incision)}: ${width}, ${place}`;
}

export function coverWords(cover: Cover | undefined): string {
  if (cover === undefined) return '';
  if (cover.kind === 'none') return '; it covers no part of the optic edge';
  if (cover.kind === 'all round') {
    const [least, greatest] = [millimetres(cover.least), millimetres(cover.greatest)];
    return `; it covers the optic edge all round, by ${least}${least === greatest ? '' : ` to ${greatest}`}`;
  }
  const from = degrees(Math.round(asPosition(cover.toward - cover.halfOnCapsulotomy)));
  const to = degrees(Math.round(asPosition(cover.toward + cover.halfOnCapsulotomy)));
  const share = Math.round(cover.offShare * 100);
  return `; from ${from} counter-clockwise to ${to} (${share} % of it) it lies off the optic: hatched`;
}

/** The found axis beside the aimed one: the difference is at most 90 degrees either way. */
export function foundAxisWords(found: number, aimed: number | undefined): string {
  const start = `Toric axis found: ${meridianDegrees(found)}`;
  if (aimed === undefined) return start;
  const apart = ((((found - aimed) % 180) + 270) % 180) - 90;
  if (Math.abs(apart) < 0.05) return `${start}, as aimed`;
  return `${start}, ${degrees(Math.abs(apart))} ${apart > 0 ? 'counter-clockwise' : 'clockwise'} of the aim`;
}
