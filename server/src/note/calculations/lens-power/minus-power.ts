import type { Outcome } from '../outcome.ts';

/**
 * The power a formula gives when a lens has constants of its own for minus powers.
 * The sign does not depend on the constants (a lens of 0 D acts the same wherever it sits), so the ordinary constants
 * decide the sign and the minus constants decide the amount.
 * Source: Haigis, J Cataract Refract Surg 2009;35:906-11 (separate constants), seen as quoted in a letter of 2010.
 */
export function powerWithMinusConstants(
  withOrdinary: Outcome<number>,
  withMinus: Outcome<number> | undefined,
): Outcome<number> {
  if (!withOrdinary.ok || withOrdinary.value >= 0 || withMinus === undefined) return withOrdinary;
  return withMinus;
}
