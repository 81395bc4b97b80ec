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
  readonly capsulotomy?: Capsulotomy | undefined;
  /** Its offset is measured from the centre of the pupil, the centre of the picture. */
  readonly optic?: Optic | undefined;
  readonly ring?: Ring | undefined;
  readonly zonule?: Zonule | undefined;
  /** Devices that hold the pupil open. */
  readonly pupilAids?: readonly PupilAid[] | undefined;
  /** What the note says is not there: neither drawn nor missing. */
  readonly absent?: readonly Absent[] | undefined;
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
  /** Made for a hook, which lies where the incision does. */
  readonly hook?: boolean | undefined;
}

export interface Disc extends Written {
  readonly diameter?: number | undefined;
  readonly offset?: Offset | undefined;
}

export interface Capsulotomy extends Disc {
  /** Why no unbroken rim surrounds it; a circle then only tells its size. */
  readonly brokenRim?: string | undefined;
}

export interface Optic extends Disc {
  /** Where the lens lies, as a phrase such as “in the sulcus”. */
  readonly place?: string | undefined;
  /** Lies elsewhere than in the bag, so that no rim of the capsule covers it. */
  readonly outOfBag?: boolean | undefined;
}

/** How far a centre lies off, and toward which position of the dial. */
export interface Offset {
  /** null: not measured. */
  readonly distance: number | null;
  readonly toward: number;
}

export interface Ring extends Written {
  readonly used: boolean;
  /** What it is, where it is no plain ring. */
  readonly kind?: 'ring with eyelet' | 'segment' | undefined;
  /** Why it is not in the eye any more. */
  readonly out?: 'removed again' | 'lost' | undefined;
  /** Diameter of the ring as it lies compressed in the bag. */
  readonly diameter?: number | undefined;
}

export interface Zonule extends Written {
  readonly state: 'intact' | 'weak' | 'ruptured' | 'absent';
  /** Over how many clock hours it is ruptured. */
  readonly hours?: number | undefined;
  /** The middle of the defect. */
  readonly middle?: number | undefined;
}

export interface PupilAid extends Written {
  readonly kind: 'iris hooks' | 'expansion ring';
  readonly count?: number | undefined;
}

export interface Absent extends Written {
  readonly part: 'capsulotomy' | 'optic';
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
