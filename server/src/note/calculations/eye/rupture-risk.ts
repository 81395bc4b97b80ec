import { calculation } from '../calculation.ts';
import { choice, optional, quantity, type Field } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

export const GRADES = [
  'consultant',
  'associate-specialist',
  'staff-grade',
  'fellow',
  'specialist-registrar',
  'senior-house-officer',
] as const;
export type Grade = (typeof GRADES)[number];

/** What the model asks for. A factor left out is counted as absent and named in a caution. */
export interface RiskFactors {
  readonly ageYears?: number;
  readonly male?: boolean;
  readonly glaucoma?: boolean;
  readonly diabeticRetinopathy?: boolean;
  readonly brunescentOrWhite?: boolean;
  readonly noFundalView?: boolean;
  readonly pseudoexfoliationOrPhacodonesis?: boolean;
  readonly pupil?: 'large' | 'medium' | 'small';
  readonly axialLengthMm?: number;
  readonly doxazosin?: boolean;
  readonly cannotLieFlat?: boolean;
  readonly grade?: Grade;
}

const BASELINE = 0.0075;
const BY_GRADE: Readonly<Record<Grade, number>> = {
  consultant: 1,
  'associate-specialist': 0.87,
  'staff-grade': 0.36,
  fellow: 1.65,
  'specialist-registrar': 1.6,
  'senior-house-officer': 3.73,
};
const BY_PUPIL = { large: 1, medium: 1.14, small: 1.45 } as const;
const YES_OR_NO = [
  ['male', 'male', 1.28],
  ['glaucoma', 'glaucoma', 1.3],
  ['diabeticRetinopathy', 'diabetic retinopathy', 1.63],
  ['brunescentOrWhite', 'brunescent or white cataract', 2.99],
  ['noFundalView', 'no view of the fundus or vitreous opacity', 2.46],
  ['pseudoexfoliationOrPhacodonesis', 'pseudoexfoliation or phacodonesis', 2.92],
  ['doxazosin', 'doxazosin', 1.51],
  ['cannotLieFlat', 'unable to lie flat', 1.27],
] as const;

function oddsOfAge(age: number): number {
  if (age < 60) return 1;
  if (age < 70) return 1.14;
  if (age < 80) return 1.42;
  return age < 90 ? 1.58 : 2.37;
}

export interface RiskTerm {
  readonly factor: string;
  /** Odds ratio; 1 when the factor is absent or not recorded. */
  readonly odds: number;
  readonly recorded: boolean;
}

const term = <T>(factor: string, value: T | undefined, odds: (value: T) => number): RiskTerm => ({
  factor,
  odds: value === undefined ? 1 : odds(value),
  recorded: value !== undefined,
});

/** Every factor of the model with its odds ratio for this eye. */
export function riskTerms(factors: RiskFactors): readonly RiskTerm[] {
  return [
    term('age', factors.ageYears, oddsOfAge),
    ...YES_OR_NO.map(([key, label, odds]) => term(label, factors[key], (present) => (present ? odds : 1))),
    term('pupil', factors.pupil, (size) => BY_PUPIL[size]),
    term('axial length', factors.axialLengthMm, (length) => (length >= 26 ? 1.47 : 1)),
    term("surgeon's grade", factors.grade, (value) => BY_GRADE[value]),
  ];
}

const yesNo = (label: string): Field => optional(choice(label, [true, false]));
const inputs: Readonly<Record<keyof RiskFactors, Field>> = {
  ageYears: optional(quantity('age', 'years', 18, 115)),
  male: yesNo('male'),
  glaucoma: yesNo('glaucoma'),
  diabeticRetinopathy: yesNo('diabetic retinopathy'),
  brunescentOrWhite: yesNo('brunescent or white cataract'),
  noFundalView: yesNo('no view of the fundus'),
  pseudoexfoliationOrPhacodonesis: yesNo('pseudoexfoliation or phacodonesis'),
  pupil: optional(choice('pupil', ['large', 'medium', 'small'])),
  axialLengthMm: optional(quantity('axial length', 'mm', 14, 40)),
  doxazosin: yesNo('doxazosin'),
  cannotLieFlat: yesNo('unable to lie flat'),
  grade: optional(choice("surgeon's grade", GRADES)),
};

const source = { citation: `${CITATIONS.narendran2009} (55 567 operations)`, status: 'from memory' } as const;
const domain =
  'Cataract operations of adults; model of 2009 for posterior capsule rupture or vitreous loss, 0.75 % with no factor and a consultant.';
const cautions = [
  'A baseline of 2009 (1.92 % overall) overstates the risk of today about two-fold (1.01 % in 2016-2022; Sim et al., Eye 2024, seen).',
  'Most odds ratios are from memory of the publication.',
  'For counselling and planning in the light of local figures; not a prediction for one person.',
];
const example: RiskFactors = { ageYears: 75, glaucoma: true };

const composite = (factors: RiskFactors): number => riskTerms(factors).reduce((product, { odds }) => product * odds, 1);

function notRecorded(factors: RiskFactors): string[] {
  const missing = riskTerms(factors).filter(({ recorded }) => !recorded);
  return missing.length === 0
    ? []
    : [`Counted as absent because not recorded: ${missing.map(({ factor }) => factor).join(', ')}.`];
}

export const ruptureOdds = calculation<RiskFactors, number>({
  name: 'rupture-risk-odds',
  topic: 'Eye',
  definition: 'Product of the odds ratios of the factors present.',
  inputs,
  unit: '',
  domain,
  method: 'product of odds ratios',
  source,
  cautions,
  example: { input: example, gives: 1.846 },
  compute: (factors) => found(composite(factors), notRecorded(factors)),
});

export const ruptureRisk = calculation<RiskFactors, number>({
  name: 'rupture-risk',
  topic: 'Eye',
  definition: 'Probability of posterior capsule rupture or vitreous loss, 0 to 1.',
  inputs,
  unit: '',
  domain,
  method: 'o / (1 + o), o = (0.0075 / 0.9925) x composite odds ratio (model of 2009)',
  source,
  cautions,
  example: { input: example, gives: 0.013758 },
  compute: (factors) => {
    const odds = (BASELINE / (1 - BASELINE)) * composite(factors);
    return found(odds / (1 + odds), notRecorded(factors));
  },
});
