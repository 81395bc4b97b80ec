import type { Keratometry as TypedKeratometry, Field, Operation, Quantity, Site } from '@sideport/schemas';
import { cornealAstigmatism } from '../../calculations/keratometry/corneal-astigmatism.ts';
import { powerOfRadius, USUAL_INDEX } from '../../calculations/keratometry/index-of-refraction.ts';
import type { Keratometry, Meridian } from '../../calculations/keratometry/meridians.ts';
import { positionOfHour } from '../../calculations/position/clock-hour.ts';
import { positionOf } from '../../calculations/position/site.ts';
import { positionFromSurgeonsView } from '../../calculations/position/surgeons-view.ts';
import type { Eye, Vector } from '../../calculations/quantities.ts';
import type { CheckContext } from '../check.ts';

interface Measured {
  readonly k1?: Field<TypedKeratometry>;
  readonly k2?: Field<TypedKeratometry>;
  readonly index?: Field<Quantity>;
}

/** K1 and K2 in dioptres with their meridians, when both were recorded. */
export function keratometryOf(measured: Measured | undefined): Keratometry | undefined {
  const index = measured?.index?.value.amount ?? USUAL_INDEX;
  if (measured?.k1 === undefined || measured.k2 === undefined) return undefined;
  return { k1: meridianOf(measured.k1.value, index), k2: meridianOf(measured.k2.value, index) };
}

function meridianOf({ amount, unit, meridian }: TypedKeratometry, index: number): Meridian {
  return { powerD: unit === 'D' ? amount : powerOfRadius(amount, index), axis: meridian };
}

export function meanOf({ k1, k2 }: Keratometry): number {
  return (k1.powerD + k2.powerD) / 2;
}

/** Corneal astigmatism with the steep meridian, when it can be told. */
export function astigmatismOf(measured: Measured | undefined): Vector | undefined {
  const keratometry = keratometryOf(measured);
  if (keratometry === undefined) return undefined;
  const outcome = cornealAstigmatism(keratometry);
  return outcome.ok ? outcome.value : undefined;
}

/** Dial position of a place on the eye; undefined for the surgeon's own clock when the seat is not known. */
export function positionOn(site: Site, eye: Eye, seat?: Field<Parameters<typeof positionOf>[0]>): number | undefined {
  if (site.kind === 'degrees') return site.degrees % 360;
  if (site.kind === 'word') return positionOf(site.word, eye);
  if (site.view === 'anatomical') return (positionOfHour(site.hour) + 360) % 360;
  if (seat === undefined) return undefined;
  const outcome = positionFromSurgeonsView({ hour: site.hour, seat: positionOf(seat.value, eye) });
  return outcome.ok ? outcome.value : undefined;
}

/** Degrees between two places on the dial, 0 to 180. */
export function apart(a: number, b: number): number {
  const turned = Math.abs(a - b) % 360;
  return turned > 180 ? 360 - turned : turned;
}

/** The axial length in mm. */
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
