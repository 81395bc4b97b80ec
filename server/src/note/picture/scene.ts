/**
 * What a picture of the eye is drawn from: plain data, every part optional, each with the place it was written.
 * An absent part, or an absent value of a part, means "not recorded" and is never taken as zero.
 *
 * Positions are degrees 0-360 on the dial of ISO 8429 (seen facing the eye, 0 on the viewer's right, counter-clockwise);
 * meridians and axes are degrees 0-180; lengths are millimetres; astigmatism is in dioptres.
 */
export interface Scene {
  readonly eye?: (Written & { readonly side: Side }) | undefined;
  /** Where the surgeon sits: the point of the dial nearest to the surgeon. */
  readonly seat?: (Written & { readonly position: number }) | undefined;
  /** White-to-white diameter; without it the limbus is drawn at a usual size and said to be so. */
  readonly limbus?: (Written & { readonly diameter: number }) | undefined;
  /** Undefined: not recorded. */
  readonly incisions?: readonly Incision[] | undefined;
  readonly steepMeridian?: (Written & { readonly meridian: number }) | undefined;
  /** Its offset is measured from the centre of the optic. */
  readonly capsulotomy?: Disc | undefined;
  /** Its offset is measured from the centre of the pupil, the centre of the picture. */
  readonly optic?: Disc | undefined;
  readonly ring?: Ring | undefined;
  /** Toric lens only: the meridian the lens marks were aimed at, and where they were found. */
  readonly aimedAxis?: (Written & { readonly axis: number }) | undefined;
  readonly foundAxis?: (Written & { readonly axis: number }) | undefined;
}

export type Side = 'right' | 'left';

/** The place in the note where a part was written. */
export interface Written {
  readonly path: Path;
  /** UTF-16 offsets. */
  readonly span?: { readonly start: number; readonly end: number } | undefined;
}

export type Path = readonly (string | number)[];

export interface Incision extends Written {
  readonly kind: 'main' | 'side-port' | 'relaxing' | 'other';
  readonly position?: number | undefined;
  readonly width?: number | undefined;
}

export interface Disc extends Written {
  readonly diameter?: number | undefined;
  readonly offset?: Offset | undefined;
}

/** How far a centre lies off, and toward which position of the dial. */
export interface Offset {
  /** null: not measured. */
  readonly distance: number | null;
  readonly toward: number;
}

export interface Ring extends Written {
  readonly used: boolean;
  /** Diameter of the ring as it lies compressed in the bag. */
  readonly diameter?: number | undefined;
}

/** Corneal astigmatism; the meridian is the steep one, null where the magnitude is 0. */
export interface AstigmatismVectors {
  readonly before?: AstigmatismVector | undefined;
  readonly expected?: AstigmatismVector | undefined;
  readonly achieved?: AstigmatismVector | undefined;
}

export interface AstigmatismVector extends Written {
  readonly magnitude: number;
  readonly meridian: number | null;
}
