import type { Absent, Capsulotomy, Disc, Optic, PupilAid, Ring, Side, Zonule } from './scene.ts';
import { millimetres, placeWords } from './words.ts';

export function capsulotomyWords(disc: Capsulotomy, side: Side | undefined): string {
  const rim =
    disc.brokenRim === undefined
      ? ''
      : `; no unbroken rim (${disc.brokenRim}): the circle shows its size, not that it covers the optic`;
  return `Capsulotomy: ${discWords(disc, side)}${rim}`;
}

export function opticWords(disc: Optic, side: Side | undefined): string {
  return `Lens optic${disc.place === undefined ? '' : ` ${disc.place}`}: ${discWords(disc, side)}`;
}

function discWords(disc: Disc, side: Side | undefined): string {
  const size = disc.diameter === undefined ? 'diameter not recorded' : millimetres(disc.diameter);
  return `${size}, ${offsetWords(disc, side)}`;
}

function offsetWords({ offset }: Disc, side: Side | undefined): string {
  if (offset === undefined) return 'centration not recorded';
  if (offset.distance === null) return `off centre toward ${placeWords(offset.toward, side)}, distance not measured`;
  if (offset.distance === 0) return 'centred';
  return `${millimetres(offset.distance)} off centre toward ${placeWords(offset.toward, side)}`;
}

export function ringWords(ring: Ring): string {
  if (!ring.used) return 'No capsular tension ring used';
  const name = ring.kind === 'segment' ? 'Capsular tension segment' : 'Capsular tension ring';
  if (ring.out !== undefined) return `${name}: ${ring.out}, not drawn`;
  if (ring.kind === 'segment') return `${name}: place not recorded, not drawn`;
  const eyelet = ring.kind === undefined ? '' : ' with eyelet';
  if (ring.diameter === undefined) return `${name}${eyelet}: size not recorded`;
  return `${name}${eyelet}: ${millimetres(ring.diameter)} compressed`;
}

/** Whether the ring lies in the eye all round, so that its circle can be drawn once its size is known. */
export function isRingThere(ring: Ring | undefined): boolean {
  return ring?.used === true && ring.out === undefined && ring.kind !== 'segment';
}

export function zonuleWords({ state, hours: extent, middle }: Zonule, side: Side | undefined): string {
  const place = middle === undefined ? 'place not recorded' : placeWords(middle, side);
  if (state !== 'ruptured') return `Zonule ${state}: ${place}`;
  if (extent === undefined) return `Zonule ruptured: extent not recorded, ${place}`;
  if (extent >= 12) return 'Zonule ruptured: 12 clock hours, all round';
  return `Zonule ruptured: ${extent} clock hour${extent === 1 ? '' : 's'}, ${middle === undefined ? place : `the middle at ${place}`}`;
}

/** A device in the pupil; hooks lie where incisions were made for them. */
export function pupilAidWords({ kind, count }: PupilAid, hookIncisions: number): string {
  if (kind === 'expansion ring') return 'Pupil expansion ring used, not drawn';
  const number = count === undefined ? 'number not recorded' : `${count} used`;
  if (hookIncisions === 0) return `Iris hooks: ${number}, places not recorded, not drawn`;
  return `Iris hooks: ${number}, drawn at ${hookIncisions === 1 ? 'the one hook incision' : `the ${hookIncisions} hook incisions`} recorded`;
}

export const ABSENT_WORDS: Readonly<Record<Absent['part'], string>> = {
  capsulotomy: 'No capsulotomy made',
  optic: 'No lens implanted: the eye was left without one',
};
