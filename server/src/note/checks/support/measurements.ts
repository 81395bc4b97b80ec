import { Lately } from '../../lately.ts';
import type { Field, Operation, Quantity, Site } from '@sideport/schemas';
import { awayFromSquare, type Keratometry } from '../../calculations/keratometry/meridians.ts';
import type { Site as SiteWord } from '../../calculations/position/site.ts';
import type { Eye, Vector } from '../../calculations/quantities.ts';
import { corneaOf, type Cornea } from '../../computing/corneas.ts';
import { valueOf } from '../../computing/known.ts';
import { positionOfPlace } from '../../computing/positions.ts';
import type { CheckContext } from '../check.ts';

type Measured = NonNullable<Parameters<typeof corneaOf>[0]>;

const corneas = new Lately<Measured, Cornea>();

function corneaFrom(measured: Measured): Cornea {
  const known = corneas.get(measured);
  if (known !== undefined) return known;
  const cornea = corneaOf(measured, undefined);
  corneas.set(measured, cornea);
  return cornea;
}

/** K1 and K2 in dioptres with their meridians, when both were recorded. */
export function keratometryOf(measured: Measured | undefined): Keratometry | undefined {
  if (measured === undefined) return undefined;
  const { k1, k2 } = corneaFrom(measured);
  return k1.ok && k2.ok ? { k1: k1.value, k2: k2.value } : undefined;
}

/** Mean keratometry (D). */
export function meanOf({ k1, k2 }: Keratometry): number {
  return (k1.power + k2.power) / 2;
}

/** Corneal astigmatism with the steep meridian, when it can be told. */
export function astigmatismOf(measured: Measured | undefined): Vector | undefined {
  if (measured === undefined) return undefined;
  const { astigmatism } = corneaFrom(measured);
  return astigmatism.ok ? astigmatism.value : undefined;
}

const SQUARE_WITHIN = 10;

/** Whether the two meridians are far from square: that is asked about, and nothing else is concluded from them. */
export function isNotSquare(measured: Measured | undefined): boolean {
  const keratometry = keratometryOf(measured);
  return (
    keratometry !== undefined &&
    keratometry.k1.power !== keratometry.k2.power &&
    awayFromSquare(keratometry) > SQUARE_WITHIN
  );
}

/** Dial position of a place on the eye; undefined for the surgeon's own clock when the seat is not known. */
export function positionOn(site: Site, eye: Eye, seat?: Field<SiteWord>): number | undefined {
  const outcome = positionOfPlace(site, { ok: true, value: eye, unit: '' }, valueOf(seat, 'the seat'));
  return outcome.ok ? outcome.value : undefined;
}

/** Degrees between two places on the dial, 0 to 180. */
export function apart(a: number, b: number): number {
  const turned = (((a - b) % 360) + 360) % 360;
  return turned > 180 ? 360 - turned : turned;
}

/** The axial length. */
export function lengthOf(note: Operation): Field<Quantity> | undefined {
  return note.preop?.biometry?.['axial-length'];
}

const LONG_EYE = 26;

/** From which axial length (mm) an eye counts as long: the department's own limit, or 26 mm. */
export function longFrom({ department }: CheckContext): number {
  return department?.thresholds?.['long-eye']?.value.amount ?? LONG_EYE;
}

/** The axial length, when it makes the eye a long one. */
export function longLength(note: Operation, context: CheckContext): Field<Quantity> | undefined {
  const length = lengthOf(note);
  return length !== undefined && length.value.amount >= longFrom(context) ? length : undefined;
}
