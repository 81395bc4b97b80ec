import { calculation, type Calculation } from '../calculation.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';
import { PERSONAL_ACD } from './hoffer-q.ts';
import { A_CONSTANT, chamberConstantOfA } from './srk-t.ts';

const cautions = [
  'A converted constant is a starting value only; replace it by one optimised for this lens, formula and biometer.',
];

interface Conversion {
  readonly name: string;
  readonly definition: string;
  readonly method: string;
  readonly citation: string;
  readonly gives: number;
  readonly domain?: string;
  readonly convert: (aConstant: number) => number;
}

/** A conversion from the A constant, the constant most lens boxes carry. */
function fromA(conversion: Conversion): Calculation<{ aConstant: number }, number> {
  const { convert, citation, gives, domain = 'Single-piece lenses for the bag, plus powers.', ...words } = conversion;
  return calculation<{ aConstant: number }, number>({
    ...words,
    topic: 'Lens constants',
    inputs: { aConstant: A_CONSTANT },
    unit: 'mm',
    domain,
    source: { citation, status: 'from memory' },
    cautions,
    example: { input: { aConstant: 118.4 }, gives },
    compute: ({ aConstant }) => found(convert(aConstant)),
  });
}

export const chamberConstantFromA = fromA({
  name: 'chamber-constant-from-a',
  definition: 'The chamber-depth constant inside SRK/T that an A constant stands for.',
  method: '0.62467 A - 68.747',
  citation: CITATIONS.srkT,
  gives: 5.213928,
  convert: chamberConstantOfA,
});

export const surgeonFactorFromA = fromA({
  name: 'surgeon-factor-from-a',
  definition: 'Surgeon factor of Holladay 1 from an A constant.',
  method: '0.5663 A - 65.60',
  citation: CITATIONS.holladay1988,
  gives: 1.44992,
  convert: (aConstant) => 0.5663 * aConstant - 65.6,
});

export const personalAcdFromA = fromA({
  name: 'personal-acd-from-a',
  definition: 'Personalised chamber depth (pACD) of Hoffer Q from an A constant.',
  method: '0.58357 A - 63.896',
  citation: CITATIONS.hofferQ,
  gives: 5.198688,
  convert: (aConstant) => 0.58357 * aConstant - 63.896,
});

export const haigisA0FromA = fromA({
  name: 'haigis-a0-from-a',
  definition: 'Constant a0 of Haigis from an A constant, for a1 = 0.4 and a2 = 0.1.',
  method: '0.62467 A - 72.434',
  citation: CITATIONS.haigis2000,
  gives: 1.526928,
  domain:
    'Only together with a1 = 0.4 and a2 = 0.1. With a converted a0 Haigis reads about 0.5 to 1.5 D higher than the others.',
  convert: (aConstant) => 0.62467 * aConstant - 72.434,
});

export const surgeonFactorFromPersonalAcd = calculation<{ pAcd: number }, number>({
  name: 'surgeon-factor-from-personal-acd',
  topic: 'Lens constants',
  definition: 'Surgeon factor of Holladay 1 from a personalised chamber depth.',
  inputs: { pAcd: PERSONAL_ACD },
  unit: 'mm',
  domain: 'Single-piece lenses for the bag, plus powers.',
  method: '0.9704 pACD - 3.595',
  source: { citation: CITATIONS.holladay1988, status: 'from memory' },
  cautions,
  example: { input: { pAcd: 5.2 }, gives: 1.45108 },
  compute: ({ pAcd }) => found(0.9704 * pAcd - 3.595),
});
