import { summariseErrors } from '../statistics/summaries.ts';
import { REFRACTION_WINDOW, type Case } from './cases.ts';
import { figure, share, shareOf, type Benchmark, type Figure, type FigureText } from './figure.ts';
import type { CaseGroup } from './group.ts';

const WINDOW = `the last visit ${REFRACTION_WINDOW.fromDays} to ${REFRACTION_WINDOW.toDays} days after the operation`;
const ERROR = `achieved minus predicted spherical equivalent at ${WINDOW}; the prediction is for the lens implanted`;
const MEASURES = 'Hoffer et al., Am J Ophthalmol 2015;160:403-5';
const BROGAN = 'Brogan et al., Br J Ophthalmol 2019;103:539 (8,943 eyes)';
const GALE = 'Gale et al., Eye 2009;23:149-52 (proposed standard)';
const BOTH_EYES = 'Both eyes of one patient are not independent: the interval is a little too narrow.';

const FOLLOWED: FigureText = {
  name: 'refraction-followed',
  label: 'Eyes with a refraction after the operation',
  method: `share of operations with a lens implanted that have a refraction at ${WINDOW}`,
  source: 'common practice, no source',
};
const MEAN: FigureText = {
  name: 'prediction-error-mean',
  label: 'Prediction error, mean',
  unit: 'D',
  method: `mean of ${ERROR}; Student's limits`,
  source: MEASURES,
  benchmarks: [{ value: -0.07, source: BROGAN }],
  cautions: [BOTH_EYES],
};
const SD: FigureText = {
  name: 'prediction-error-sd',
  label: 'Prediction error, standard deviation',
  unit: 'D',
  method: `standard deviation (n - 1) of ${ERROR}`,
  source: MEASURES,
  benchmarks: [{ value: 0.67, source: BROGAN }],
};
const MAE: FigureText = {
  name: 'prediction-error-mean-absolute',
  label: 'Absolute prediction error, mean',
  unit: 'D',
  method: `mean of the absolute ${ERROR}`,
  source: MEASURES,
  benchmarks: [{ value: 0.5, source: BROGAN }],
};
const MEDAE: FigureText = {
  name: 'prediction-error-median-absolute',
  label: 'Absolute prediction error, median',
  unit: 'D',
  method: `median of the absolute ${ERROR}`,
  source: 'Wang et al., J Cataract Refract Surg 2017;43:999-1002 (from memory)',
};

const WITHIN_BENCHMARKS: Readonly<Record<string, readonly Benchmark[]>> = {
  '0.50': [
    { value: 55, source: GALE },
    { value: 62.36, source: BROGAN },
  ],
  '1.00': [
    { value: 85, source: GALE },
    { value: 88.76, source: BROGAN },
  ],
};

function within(bound: number): FigureText {
  const written = bound.toFixed(2);
  return {
    name: `within-${written}`,
    label: `Within ${written} D of the prediction`,
    method: `share of eyes whose absolute error is at most ${written} D, the bound included`,
    source: MEASURES,
    benchmarks: WITHIN_BENCHMARKS[written] ?? [],
    cautions: [BOTH_EYES],
  };
}

const hasLens = (one: Case): boolean => one.operation.lens !== null;

/** Refractive outcome of a group against the prediction for the lens implanted. */
export function refraction({ group, cases }: CaseGroup): readonly Figure[] {
  const implanted = cases.filter(hasLens);
  const errors = implanted.map((one) => one.predictionError).filter((error) => error !== null);
  const missing = implanted.length - errors.length;
  const followed = shareOf(FOLLOWED, group, implanted, (one) => one.refraction !== null);
  const summary = summariseErrors(errors);
  if (summary === null) return [followed, figure(MEAN, group, { value: null, n: 0, missing })];
  const { n, meanInterval } = summary;
  return [
    followed,
    figure(MEAN, group, {
      value: summary.mean,
      n,
      missing,
      interval: meanInterval && { ...meanInterval, level: 0.95, method: 'Student' },
    }),
    figure(SD, group, { value: summary.sd, n, missing }),
    figure(MAE, group, { value: summary.meanAbsolute, n, missing }),
    figure(MEDAE, group, { value: summary.medianAbsolute, n, missing }),
    ...summary.within.map(({ bound, count }) => share(within(bound), group, count, n, missing)),
  ];
}

/** Only the mean error of a group, for groups of which there are many. */
export function refractionShift(within: CaseGroup): readonly Figure[] {
  return refraction(within).filter((one) => one.name === MEAN.name);
}
