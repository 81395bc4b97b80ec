import type { Department, Field, FormulaSlug, Quantity } from '@sideport/schemas';
import {
  haigisA0FromA,
  personalAcdFromA,
  surgeonFactorFromA,
  surgeonFactorFromPersonalAcd,
} from '../calculations/lens-power/constants.ts';
import { HAIGIS_A1, HAIGIS_A2 } from '../calculations/lens-power/haigis.ts';
import type { Outcome } from '../calculations/outcome.ts';
import { amountOf, type Known } from './known.ts';

export type LensConstants = NonNullable<NonNullable<Department['lenses']>['items'][number]['constants']>;

/** A constant of a formula for one lens, with what must be said of where it comes from. */
export interface LensConstant {
  readonly value: Known<number>;
  readonly cautions: readonly string[];
}

/** The further constants of Haigis. */
export interface HaigisConstants {
  readonly a1: number;
  readonly a2: number;
  readonly cautions: readonly string[];
}

const NAME: Readonly<Record<FormulaSlug, string>> = {
  'srk-t': 'the A constant',
  t2: 'the A constant',
  'holladay-1': 'the surgeon factor',
  'hoffer-q': 'the pACD',
  haigis: 'the constant a0',
};

/** The constant of a formula; where the lens has none of its own, one converted from another is a starting value. */
export function constantOf(formula: FormulaSlug, constants: LensConstants, model: string): LensConstant {
  const own = ownConstant(formula, constants);
  if (own !== undefined) return { value: amountOf(own, NAME[formula]), cautions: [] };
  const converted = convertedConstant(formula, constants);
  if (converted?.ok === true)
    return {
      value: converted,
      cautions: [
        `${capitalised(NAME[formula])} of ${model} is converted from another constant: a starting value only.`,
      ],
    };
  const because = `${NAME[formula]} of ${model} is missing in the department's lens list`;
  return { value: { ok: false, because }, cautions: [] };
}

function ownConstant(formula: FormulaSlug, constants: LensConstants): Field<Quantity> | undefined {
  if (formula === 'holladay-1') return constants.sf;
  if (formula === 'hoffer-q') return constants.pacd;
  return formula === 'haigis' ? constants.a0 : constants.a;
}

function convertedConstant(formula: FormulaSlug, constants: LensConstants): Outcome<number> | undefined {
  const aConstant = constants.a?.value.amount;
  const pAcd = constants.pacd?.value.amount;
  if (formula === 'holladay-1' && pAcd !== undefined) return surgeonFactorFromPersonalAcd({ pAcd });
  if (aConstant === undefined) return undefined;
  if (formula === 'holladay-1') return surgeonFactorFromA({ aConstant });
  if (formula === 'hoffer-q') return personalAcdFromA({ aConstant });
  return formula === 'haigis' ? haigisA0FromA({ aConstant }) : undefined;
}

/** a1 and a2 of Haigis; a converted a0 holds only with the formula's own 0.4 and 0.1. */
export function haigisConstantsOf(constants: LensConstants): HaigisConstants {
  const a1 = constants.a1?.value.amount;
  const a2 = constants.a2?.value.amount;
  if (constants.a0 !== undefined && a1 !== undefined && a2 !== undefined) return { a1, a2, cautions: [] };
  return {
    a1: HAIGIS_A1,
    a2: HAIGIS_A2,
    cautions:
      constants.a0 === undefined ? [] : [`a1 and a2 are not both listed; ${HAIGIS_A1} and ${HAIGIS_A2} are taken.`],
  };
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
