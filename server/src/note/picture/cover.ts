import { asPosition } from '../calculations/angles.ts';
import type { Disc } from './scene.ts';

/** How the capsulotomy edge lies on the optic. Lengths in mm, directions are positions on the dial. */
export type Cover =
  | { readonly kind: 'all round'; readonly least: number; readonly greatest: number }
  | {
      readonly kind: 'part';
      /** Share (0-1) of the capsulotomy edge that lies off the optic. */
      readonly offShare: number;
      /** The middle of the uncovered arc. */
      readonly toward: number;
      /** Half the uncovered arc, in degrees about the centre of the capsulotomy, and about the centre of the optic. */
      readonly halfOnCapsulotomy: number;
      readonly halfOnOptic: number;
    }
  | { readonly kind: 'none' };

/**
 * Two circles of known size and centre: complete if and only if radius + offset is at most the radius of the optic;
 * otherwise the angle follows from the law of cosines. Undefined where a diameter or the offset of the
 * capsulotomy from the optic is not recorded.
 */
export function cover(capsulotomy: Disc | undefined, optic: Disc | undefined): Cover | undefined {
  const e = capsulotomy?.offset?.distance ?? undefined;
  if (capsulotomy?.diameter === undefined || capsulotomy.offset === undefined || e === undefined) return undefined;
  if (optic?.diameter === undefined) return undefined;
  const c = capsulotomy.diameter / 2;
  const r = optic.diameter / 2;
  if (c + e <= r + ROUNDING) return { kind: 'all round', least: Math.max(0, r - c - e), greatest: r - c + e };
  if (c >= r + e - ROUNDING || e >= c + r) return { kind: 'none' };
  const onCapsulotomy = Math.acos((r * r - e * e - c * c) / (2 * e * c));
  return {
    kind: 'part',
    offShare: onCapsulotomy / Math.PI,
    toward: asPosition(capsulotomy.offset.toward),
    halfOnCapsulotomy: (onCapsulotomy * 180) / Math.PI,
    halfOnOptic: (Math.acos((r * r + e * e - c * c) / (2 * e * r)) * 180) / Math.PI,
  };
}

/** Decimal fractions such as 2.7 + 0.3 do not add up exactly. */
const ROUNDING = 1e-9;
