import { solveIncreasing } from '../../statistics/special-functions.ts';
import { mean, standardDeviation, summariseErrors, type ErrorSummary } from '../../statistics/summaries.ts';
import type { Case } from '../cases.ts';
import { groupBy } from '../group-by.ts';
import { LEARNABLE, type LearnableFormula, type LearningEye } from './formulas.ts';

/** Constants of a lens in the department file, by key. */
export type PresentConstants = Readonly<
  Record<string, Readonly<Partial<Record<LearnableFormula['constant'], number>>>>
>;

/** A proposed constant of one lens model for one formula. */
export interface ProposedConstant {
  readonly model: string;
  readonly formula: string;
  readonly constant: LearnableFormula['constant'];
  readonly present: number | null;
  readonly proposed: number;
  readonly standardError: number | null;
  readonly eyes: number;
  /** With the present constant, where there is one. */
  readonly before: ErrorSummary | null;
  readonly after: ErrorSummary | null;
  /** Eyes over 26 mm: not used to find the constant, and what the proposed one leaves them. */
  readonly long: { readonly eyes: number; readonly meanErrorD: number | null };
  readonly cautions: readonly string[];
}

/** Eyes that were set aside and why; nothing is left out silently. */
export interface SetAside {
  readonly model: string;
  readonly reason: string;
  readonly eyes: number;
}

export const LONG_EYE_MM = 26;
/** The effect of the constant fades towards 0 D and turns there (Preussner, J Cataract Refract Surg 2010;36:531-2). */
const LEAST_POWER_D = 6;
const LEAST_EYES = 20;
/** Aristodemou et al., J Cataract Refract Surg 2011;37:50-62 (from memory): about 100 eyes for 0.10, 250 for 0.06. */
const ROUGH_EYES = 100;
const FINE_EYES = 250;

const SOURCE_OF_MINIMUM = 'Aristodemou et al., J Cataract Refract Surg 2011;37:50-62 (from memory)';

interface ModelEye extends LearningEye {
  readonly model: string;
}

function eyesOf(cases: readonly Case[]): readonly ModelEye[] {
  return cases.flatMap(({ operation, refraction }) => {
    const { lens, axialLengthMm, meanKeratometryD, chamberDepthMm } = operation;
    if (lens === null || lens.model === null || lens.powerD === null || lens.placed !== 'capsular bag') return [];
    if (axialLengthMm === null || meanKeratometryD === null || refraction === null) return [];
    const { model, powerD } = lens;
    return [{ model, axialLengthMm, meanKeratometryD, chamberDepthMm, powerD, achievedD: refraction.value }];
  });
}

function errorsWith(formula: LearnableFormula, eyes: readonly LearningEye[], constant: number): readonly number[] {
  return eyes.flatMap((eye) => {
    const predicted = formula.predict(eye, constant);
    return predicted === null ? [] : [eye.achievedD - predicted];
  });
}

function cautionsOf(eyes: number, long: number): readonly string[] {
  return [
    ...(eyes < ROUGH_EYES
      ? [
          `${eyes} eyes are fewer than the published minimum: about ${ROUGH_EYES} for an A constant within 0.10 (${SOURCE_OF_MINIMUM}). A hint, not a constant to plan with.`,
        ]
      : eyes < FINE_EYES
        ? [
            `${eyes} eyes: published experience asks for about ${FINE_EYES} for an A constant within 0.06 (${SOURCE_OF_MINIMUM}).`,
          ]
        : []),
    ...(long > 0
      ? [
          `${long} eyes over ${LONG_EYE_MM} mm were not used: a mean error in long eyes is the formula's, and a constant that hides it harms the other eyes.`,
        ]
      : []),
    'For one biometer, one way of refracting and this lens only; both eyes of one patient count twice.',
  ];
}

function propose(
  model: string,
  formula: LearnableFormula,
  eyes: readonly LearningEye[],
  long: readonly LearningEye[],
  present: number | null,
): ProposedConstant | null {
  const usable = eyes.filter((eye) => formula.predict(eye, (formula.low + formula.high) / 2) !== null);
  const achieved = mean(usable.map((eye) => eye.achievedD));
  if (achieved === null || usable.length < LEAST_EYES) return null;
  const meanPredicted = (constant: number): number => achieved - (mean(errorsWith(formula, usable, constant)) ?? NaN);
  const proposed = solveIncreasing(meanPredicted, achieved, formula.low, formula.high);
  const errors = errorsWith(formula, usable, proposed);
  const slope = (meanPredicted(proposed + 0.01) - meanPredicted(proposed - 0.01)) / 0.02;
  const sd = standardDeviation(errors);
  return {
    model,
    formula: formula.title,
    constant: formula.constant,
    present,
    proposed,
    standardError: sd === null || slope <= 0 ? null : sd / Math.sqrt(errors.length) / slope,
    eyes: usable.length,
    before: present === null ? null : summariseErrors(errorsWith(formula, usable, present)),
    after: summariseErrors(errors),
    long: { eyes: long.length, meanErrorD: mean(errorsWith(formula, long, proposed)) },
    cautions: cautionsOf(usable.length, long.length),
  };
}

/**
 * Proposes lens constants that bring the mean prediction error of a model to zero, formula by formula, over eyes up to
 * 26 mm with powers of 6 D and more. Source of the method: Hoffer et al., Am J Ophthalmol 2015;160:403-5; long eyes
 * stay out as the reply there asks (2015).
 */
export function proposeConstants(
  cases: readonly Case[],
  present: PresentConstants,
): { readonly proposals: readonly ProposedConstant[]; readonly setAside: readonly SetAside[] } {
  const proposals: ProposedConstant[] = [];
  const setAside: SetAside[] = [];
  for (const [model, eyes] of groupBy(eyesOf(cases), (eye) => eye.model)) {
    const powered = eyes.filter((eye) => eye.powerD >= LEAST_POWER_D);
    const low = eyes.length - powered.length;
    if (low > 0) {
      setAside.push({
        model,
        eyes: low,
        reason: `power below ${LEAST_POWER_D} D or minus: ordinary constants do not hold there; use constants published for such lenses (Haigis, J Cataract Refract Surg 2009;35:906-11)`,
      });
    }
    const long = powered.filter((eye) => eye.axialLengthMm > LONG_EYE_MM);
    const usual = powered.filter((eye) => eye.axialLengthMm <= LONG_EYE_MM);
    const made = LEARNABLE.map((formula) =>
      propose(model, formula, usual, long, present[model]?.[formula.constant] ?? null),
    );
    if (made.every((proposal) => proposal === null)) {
      setAside.push({
        model,
        eyes: usual.length,
        reason: `fewer than ${LEAST_EYES} eyes with biometry, lens and refraction: no constant is proposed`,
      });
    }
    proposals.push(...made.filter((proposal) => proposal !== null));
  }
  return { proposals, setAside };
}
