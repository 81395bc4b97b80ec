import type { FormulaSlug } from '@sideport/schemas';
import {
  adjustedAxialLength,
  segmentedAxialLength,
  sourceOfRegression,
  type Regression,
} from '../calculations/lens-power/axial-length-adjustment.ts';
import { refused, type Outcome } from '../calculations/outcome.ts';
import { from } from './known.ts';
import type { OperationFacts } from './operation-facts.ts';

const REGRESSION: Readonly<Record<string, Regression>> = {
  'Wang-Koch 2011': 'wang-2011',
  'Wang-Koch 2018': 'wang-koch-2018',
};

/** The adjustment that plan or department names; undefined where neither does, or the plan says none. */
export function adjustmentOf({ note, department }: OperationFacts): string | undefined {
  const word = note.plan?.['length-adjustment']?.value ?? department?.['length-adjustment']?.value;
  return word === 'none' ? undefined : word;
}

/** The axial length that a formula takes under a named adjustment. */
export function adjustedLength(adjustment: string, formula: FormulaSlug, facts: OperationFacts): Outcome<number> {
  const { axialLength, lensThickness } = facts;
  const regression = REGRESSION[adjustment];
  if (regression === undefined)
    return from({ axialLength, lensThickness }, (eye) =>
      segmentedAxialLength({ axialLengthMm: eye.axialLength, lensThicknessMm: eye.lensThickness }),
    );
  if (formula === 't2') return refused(`${adjustment} was not published for T2`);
  const outcome = from({ axialLength }, (eye) =>
    adjustedAxialLength({ axialLengthMm: eye.axialLength, formula, regression }),
  );
  return outcome.ok ? { ...outcome, source: sourceOfRegression(regression) } : outcome;
}
