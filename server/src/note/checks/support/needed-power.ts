import type { Operation } from '@sideport/schemas';
import { srkT } from '../../calculations/lens-power/srk-t.ts';
import { has, removesLens } from './course.ts';
import { keratometryOf, lengthOf, meanOf } from './measurements.ts';

/** An ordinary lens; only slips of sign, digit or eye are to be found. */
const A_CONSTANT = 118.5;

export interface NeededPower {
  /** D, in the bag, for the target or else for emmetropia. */
  readonly power: number;
  /** D by which a sound choice may be off. */
  readonly margin: number;
}

/**
 * Roughly what power an eye needs, or undefined where the rough guide does not hold or the biometry is missing.
 * Retzlaff, Sanders and Kraff, J Cataract Refract Surg 1990;16:333-40 (SRK/T, from memory); the margins are common
 * practice, no source.
 */
export function neededPower(note: Operation): NeededPower | undefined {
  const length = lengthOf(note);
  const keratometry = keratometryOf(note.preop?.biometry);
  if (length === undefined || keratometry === undefined || isSpecial(note)) return undefined;
  const axialLengthMm = length.value.amount;
  const outcome = srkT.power({
    axialLengthMm,
    meanKeratometryD: meanOf(keratometry),
    aConstant: A_CONSTANT,
    targetD: note.plan?.target?.value.amount ?? 0,
  });
  if (!outcome.ok) return undefined;
  return { power: outcome.value, margin: axialLengthMm < 26 ? 4 : axialLengthMm < 30 ? 5 : 7 };
}

const OTHER_OPTICS = ['anterior chamber', 'iris-claw'];

function isSpecial(note: Operation): boolean {
  const kind = (note.lens?.kind ?? note.plan?.lens?.kind)?.value;
  return (
    !removesLens(note) ||
    has(note.comorbidity, 'previous corneal refractive surgery') !== undefined ||
    (kind !== undefined && OTHER_OPTICS.includes(kind))
  );
}
