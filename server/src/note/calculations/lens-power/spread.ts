import { calculation } from '../calculation.ts';
import { listOf, part } from '../fields.ts';
import { LENS_POWER } from './formula.ts';
import { found } from '../outcome.ts';

export interface FormulaPower {
  readonly formula: string;
  readonly powerD: number;
}

const POWERS = listOf('powers', 'formula and power, at least two', (entry) =>
  typeof part(entry, 'formula') === 'string'
    ? LENS_POWER.fault(part(entry, 'powerD'))
    : 'a power does not name its formula',
);
const WIDE = 0.75;

export const formulaSpread = calculation<{ powers: readonly FormulaPower[] }, number>({
  name: 'formula-spread',
  topic: 'Lens power',
  definition: 'Difference between the highest and the lowest lens power of several formulas for one eye and target.',
  inputs: {
    powers: {
      ...POWERS,
      fault: (value) =>
        POWERS.fault(value) ??
        (Array.isArray(value) && value.length >= 2 ? undefined : 'a spread needs the power of at least two formulas'),
    },
  },
  unit: 'D',
  domain: 'Each formula with its own constant; converted constants widen the spread by themselves.',
  method: 'highest - lowest power',
  source: { citation: 'arithmetic', status: 'derived' },
  example: {
    input: {
      powers: [
        { formula: 'SRK/T', powerD: 4.873366 },
        { formula: 'Hoffer Q', powerD: 4.135613 },
      ],
    },
    gives: 0.737753,
  },
  compute: ({ powers }) => {
    const sorted = powers.toSorted((a, b) => a.powerD - b.powerD);
    const lowest = sorted[0];
    const highest = sorted.at(-1);
    const spread = (highest?.powerD ?? NaN) - (lowest?.powerD ?? NaN);
    return found(
      spread,
      spread > WIDE
        ? [
            `The formulas differ by more than ${WIDE} D (${lowest?.formula} lowest, ${highest?.formula} highest): check the measurements and constants, and which formula holds in such an eye (limit: common practice).`,
          ]
        : [],
    );
  },
});
