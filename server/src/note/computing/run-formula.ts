import type { FormulaSlug } from '@sideport/schemas';
import type { LensFormula, MeasuredEye } from '../calculations/lens-power/formula.ts';
import { haigis } from '../calculations/lens-power/haigis.ts';
import { hofferQ } from '../calculations/lens-power/hoffer-q.ts';
import { holladay1 } from '../calculations/lens-power/holladay-1.ts';
import { srkT } from '../calculations/lens-power/srk-t.ts';
import { t2 } from '../calculations/lens-power/t2.ts';
import type { Outcome } from '../calculations/outcome.ts';

export interface FormulaInput extends MeasuredEye {
  /** Used by Haigis only. */
  readonly chamberDepthMm?: number;
  /** A constant, surgeon factor, pACD or a0, whichever the formula takes. */
  readonly constant: number;
  readonly a1?: number;
  readonly a2?: number;
}

/** What is asked of a formula. */
export type FormulaTask =
  | { readonly kind: 'power'; readonly targetD: number }
  | { readonly kind: 'refraction'; readonly powerD: number }
  | { readonly kind: 'position' };

function ask<E extends MeasuredEye>(formula: LensFormula<E>, eye: E, task: FormulaTask): Outcome<number> {
  if (task.kind === 'power') return formula.power({ ...eye, targetD: task.targetD });
  return task.kind === 'refraction' ? formula.refraction({ ...eye, powerD: task.powerD }) : formula.position(eye);
}

/** Runs one of the published formulas. */
export function runFormula(slug: FormulaSlug, input: FormulaInput, task: FormulaTask): Outcome<number> {
  const { axialLengthMm, meanKeratometryD, lengthAdjusted = false, constantForMinus = false, constant } = input;
  const eye = { axialLengthMm, meanKeratometryD, lengthAdjusted, constantForMinus };
  if (slug === 'haigis') {
    const { chamberDepthMm = NaN, a1 = NaN, a2 = NaN } = input;
    return ask(haigis, { ...eye, chamberDepthMm, a0: constant, a1, a2 }, task);
  }
  if (slug === 'holladay-1') return ask(holladay1, { ...eye, surgeonFactor: constant }, task);
  if (slug === 'hoffer-q') return ask(hofferQ, { ...eye, pAcd: constant }, task);
  return ask(slug === 't2' ? t2 : srkT, { ...eye, aConstant: constant }, task);
}
