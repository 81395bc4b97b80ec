/** The keratometric index in common use: 337.5 / radius in mm. */
export const USUAL_INDEX = 1.3375;

/** Power (D) of a corneal radius (mm) under a keratometric index. */
export const powerOfRadius = (radiusMm: number, index: number): number => (1000 * index - 1000) / radiusMm;
