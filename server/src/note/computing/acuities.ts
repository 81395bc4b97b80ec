import type { Acuity as Written, Field } from '@sideport/schemas';
import { acuityLogmar, acuityLogmarOfCategory, type Acuity } from '../calculations/acuity/logmar.ts';
import type { AcuityScheme } from '../calculations/acuity/schemes.ts';
import { refused, type Outcome } from '../calculations/outcome.ts';

export const ACUITY_KINDS = ['uncorrected', 'corrected', 'pinhole'] as const;
export type AcuityKind = (typeof ACUITY_KINDS)[number];
export type AcuityFields = { readonly [K in AcuityKind]?: Field<Written> };

/** A measured acuity as the calculations take it; undefined for counting fingers and less. */
export function measuredAcuity(written: Written): Acuity | undefined {
  if (written.kind === 'category') return undefined;
  if (written.kind !== 'fraction') return written;
  const { distance, line, letters } = written;
  return { kind: 'fraction', numerator: distance, denominator: line, lettersMore: letters };
}

/** The scheme of a category: a measured one as far as it reaches, an extrapolated one for perception of light. */
export const schemeOf = (category: 'CF' | 'HM' | 'PL' | 'NPL'): AcuityScheme =>
  category === 'CF' || category === 'HM' ? 'schulze-bonsel-2006' : 'extrapolated';

/** logMAR of an acuity in any notation; categories by a named scheme. */
export function logmarOf(field: Field<Written> | undefined, name: string): Outcome<number> {
  if (field === undefined) return refused(`${name} is missing`);
  const { value } = field;
  if (value.kind === 'category') return acuityLogmarOfCategory(value.category, schemeOf(value.category));
  const acuity = measuredAcuity(value);
  return acuity === undefined ? refused(`${name} has no logMAR`) : acuityLogmar({ acuity });
}
