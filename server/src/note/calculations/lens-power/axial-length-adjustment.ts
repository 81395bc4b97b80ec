import { calculation } from '../calculation.ts';
import { choice, quantity } from '../fields.ts';
import { found, refused, type Source } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';
import { AXIAL_LENGTH } from './formula.ts';

/** The regressions by year of publication; each belongs to the formulas it was fitted with. */
export const REGRESSIONS = ['wang-2011', 'wang-koch-2018'] as const;
export type Regression = (typeof REGRESSIONS)[number];

/** Formulas an adjustment was published for. */
export const ADJUSTABLE = ['holladay-1', 'srk-t', 'hoffer-q', 'haigis'] as const;
export type Adjustable = (typeof ADJUSTABLE)[number];

interface Line {
  /** Applies to axial lengths over this, mm; the length itself stays unadjusted. */
  readonly above: number;
  readonly slope: number;
  readonly intercept: number;
}

const LINES: Readonly<Record<Regression, Partial<Readonly<Record<Adjustable, Line>>>>> = {
  'wang-2011': {
    'holladay-1': { above: 25.2, slope: 0.8289, intercept: 4.2663 },
    'srk-t': { above: 25.2, slope: 0.8544, intercept: 3.7222 },
    'hoffer-q': { above: 25.2, slope: 0.853, intercept: 3.5794 },
    haigis: { above: 25.2, slope: 0.9286, intercept: 1.562 },
  },
  'wang-koch-2018': {
    'holladay-1': { above: 26.5, slope: 0.817, intercept: 4.7013 },
    'srk-t': { above: 27, slope: 0.8453, intercept: 4.0773 },
  },
};

const SOURCES: Readonly<Record<Regression, Source>> = {
  'wang-2011': { citation: CITATIONS.wang2011, status: 'from memory' },
  'wang-koch-2018': { citation: CITATIONS.wangKoch2018, status: 'from memory' },
};

const cautions = [
  'Coefficients from memory of the publication, not confirmed; always compare with the unadjusted value.',
  'Made for optical biometry of long eyes; not for a length that a device has already adjusted.',
];

type Given = { axialLengthMm: number; formula: Adjustable; regression: Regression };

export const adjustedAxialLength = calculation<Given, number>({
  name: 'adjusted-axial-length',
  topic: 'Lens power',
  definition: 'Axial length to put into a formula instead of the measured one in a long eye.',
  inputs: {
    axialLengthMm: AXIAL_LENGTH,
    formula: choice('formula', ADJUSTABLE),
    regression: choice('adjustment', REGRESSIONS),
  },
  unit: 'mm',
  domain:
    'wang-2011: over 25.2 mm, four formulas. wang-koch-2018: Holladay 1 over 26.5 mm, SRK/T over 27.0 mm. The limit itself is not adjusted; at the limit the 2018 lines jump by -0.15 and -0.10 mm.',
  method:
    'slope x L + intercept: 2011 Holladay 1 0.8289, 4.2663; SRK/T 0.8544, 3.7222; Hoffer Q 0.8530, 3.5794; Haigis 0.9286, 1.5620; 2018 Holladay 1 0.817, 4.7013; SRK/T 0.8453, 4.0773',
  source: { citation: `${CITATIONS.wang2011}; ${CITATIONS.wangKoch2018}`, status: 'from memory' },
  cautions,
  example: {
    input: { axialLengthMm: 30, formula: 'holladay-1', regression: 'wang-koch-2018' },
    gives: 29.2113,
  },
  compute: ({ axialLengthMm, formula, regression }) => {
    const line = LINES[regression][formula];
    if (line === undefined) return refused(`${regression} was published for other formulas than ${formula}`);
    if (axialLengthMm <= line.above)
      return refused(`${regression} applies to axial lengths over ${line.above} mm with ${formula}`);
    return found(line.slope * axialLengthMm + line.intercept);
  },
});

/** The publication of one regression. */
export const sourceOfRegression = (regression: Regression): Source => SOURCES[regression];

export const segmentedAxialLength = calculation<{ axialLengthMm: number; lensThicknessMm: number }, number>({
  name: 'segmented-axial-length',
  topic: 'Lens power',
  definition: 'Axial length as a sum of segments would read, estimated from the usual length and lens thickness.',
  inputs: { axialLengthMm: AXIAL_LENGTH, lensThicknessMm: quantity('lens thickness', 'mm', 2, 7.5) },
  unit: 'mm',
  domain: 'Optical biometry of a phakic eye with measured lens thickness; short, usual and long eyes.',
  method: '1.23853 + 0.95855 L - 0.05467 LT',
  source: { citation: CITATIONS.cooke2019, status: 'from memory' },
  cautions,
  example: { input: { axialLengthMm: 30, lensThicknessMm: 4.5 }, gives: 29.749015 },
  compute: ({ axialLengthMm, lensThicknessMm }) => found(1.23853 + 0.95855 * axialLengthMm - 0.05467 * lensThicknessMm),
});
