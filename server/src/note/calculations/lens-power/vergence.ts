/** Refractive index of aqueous and vitreous times 1000, for lengths in millimetres. */
const MEDIA = 1336;
/** Distance (metres) from spectacle lens to cornea in all of these formulas. */
export const VERTEX_METRES = 0.012;

/** A thin-lens eye: what a formula makes of the measurements. Lengths in mm, power in D. */
export interface ThinLensEye {
  /** Cornea to lens. */
  readonly lensPosition: number;
  /** Cornea to retina as the formula counts it. */
  readonly opticalLength: number;
  readonly cornealPower: number;
}

/** Lens power (D) that leaves the spectacle refraction `refractionD`. */
export function powerForRefraction(eye: ThinLensEye, refractionD: number): number {
  const cornea = eye.cornealPower + refractionD / (1 - VERTEX_METRES * refractionD);
  return MEDIA / (eye.opticalLength - eye.lensPosition) - MEDIA / (MEDIA / cornea - eye.lensPosition);
}

/** Spectacle refraction (D) left by a lens of `powerD`: the exact inverse of `powerForRefraction`. */
export function refractionForPower(eye: ThinLensEye, powerD: number): number {
  const behindCornea = MEDIA / (eye.opticalLength - eye.lensPosition) - powerD;
  const cornea = (MEDIA * behindCornea) / (MEDIA + eye.lensPosition * behindCornea);
  const atCornea = cornea - eye.cornealPower;
  return atCornea / (1 + VERTEX_METRES * atCornea);
}
