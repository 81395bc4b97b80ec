import type { Site } from '@sideport/schemas';
import { asPosition } from '../calculations/angles.ts';
import { positionOfHour } from '../calculations/position/clock-hour.ts';
import { positionOf } from '../calculations/position/site.ts';
import type { Side } from './scene.ts';

/**
 * The position on the dial (degrees, ISO 8429) that a recorded place stands for. Undefined where that cannot be told: a
 * sector word without the eye, an hour of the surgeon's own view without the seat.
 * @param seat position of the seat on the dial
 */
export function positionOfPlace(place: Site, side: Side | undefined, seat: number | undefined): number | undefined {
  if (place.kind === 'degrees') return asPosition(place.degrees);
  if (place.kind === 'word') return side === undefined ? undefined : positionOf(place.word, side);
  const onFace = positionOfHour(place.hour);
  if (place.view === 'anatomical') return asPosition(onFace);
  return seat === undefined ? undefined : asPosition(onFace + seat - 270);
}
