import { asPosition } from '../calculations/angles.ts';
import { viewAngle } from './dial.ts';
import type { Disc } from './scene.ts';
import { pointAt } from './svg.ts';
import type { Point } from './svg.ts';

/** Drawing units for one millimetre. */
export const SCALE = 40;
/** Where the limbus is drawn when white-to-white is not recorded; an adult cornea measures about 12 mm. */
export const USUAL_LIMBUS = 12;

/** Turns positions of the dial and millimetres into points of the drawing, as seen from one seat. */
export interface View {
  readonly centre: Point;
  /** Radius of the limbus in drawing units. */
  readonly limbus: number;
  angle(position: number): number;
  at(position: number, millimetres: number): Point;
  /** The centre of a disc whose offset is measured from a point, by default the centre of the picture. */
  centreOf(disc: Disc | undefined, from?: Point): Point;
}

export function viewFrom(centre: Point, seat: number | undefined, limbusDiameter: number | undefined): View {
  const from = (point: Point, position: number, millimetres: number) =>
    pointAt(point, millimetres * SCALE, viewAngle(position, seat));
  return {
    centre,
    limbus: ((limbusDiameter ?? USUAL_LIMBUS) / 2) * SCALE,
    angle: (position) => viewAngle(asPosition(position), seat),
    at: (position, millimetres) => from(centre, position, millimetres),
    centreOf: (disc, point = centre) =>
      disc?.offset === undefined ? point : from(point, disc.offset.toward, disc.offset.distance ?? 0),
  };
}
