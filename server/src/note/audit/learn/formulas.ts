import { haigis, HAIGIS_A1, HAIGIS_A2 } from '../../calculations/lens-power/haigis.ts';
import { hofferQ } from '../../calculations/lens-power/hoffer-q.ts';
import { holladay1 } from '../../calculations/lens-power/holladay-1.ts';
import { srkT } from '../../calculations/lens-power/srk-t.ts';
import { t2 } from '../../calculations/lens-power/t2.ts';
import type { Outcome } from '../../calculations/outcome.ts';

/** An eye for which a constant can be sought. */
export interface LearningEye {
  readonly axialLengthMm: number;
  readonly meanKeratometryD: number;
  readonly chamberDepthMm: number | null;
  readonly powerD: number;
  readonly achievedD: number;
}

/** A formula with one constant to optimise. */
export interface LearnableFormula {
  readonly title: string;
  /** The key of its constant in the department file. */
  readonly constant: 'a' | 'sf' | 'pacd' | 'a0';
  readonly low: number;
  readonly high: number;
  /** Refraction predicted with this constant; null where the formula cannot say. */
  predict(eye: LearningEye, constant: number): number | null;
}

const valueOf = (outcome: Outcome<number>): number | null => (outcome.ok ? outcome.value : null);
const measured = ({ axialLengthMm, meanKeratometryD, powerD }: LearningEye) => ({
  axialLengthMm,
  meanKeratometryD,
  powerD,
});

export const LEARNABLE: readonly LearnableFormula[] = [
  {
    title: 'SRK/T',
    constant: 'a',
    low: 112,
    high: 125,
    predict: (eye, aConstant) => valueOf(srkT.refraction({ ...measured(eye), aConstant })),
  },
  {
    title: 'T2',
    constant: 'a',
    low: 112,
    high: 125,
    predict: (eye, aConstant) => valueOf(t2.refraction({ ...measured(eye), aConstant })),
  },
  {
    title: 'Holladay 1',
    constant: 'sf',
    low: -2,
    high: 5,
    predict: (eye, surgeonFactor) => valueOf(holladay1.refraction({ ...measured(eye), surgeonFactor })),
  },
  {
    title: 'Hoffer Q',
    constant: 'pacd',
    low: 2,
    high: 9,
    predict: (eye, pAcd) => valueOf(hofferQ.refraction({ ...measured(eye), pAcd })),
  },
  {
    title: 'Haigis',
    constant: 'a0',
    low: -3,
    high: 6,
    predict: (eye, a0) =>
      eye.chamberDepthMm === null
        ? null
        : valueOf(
            haigis.refraction({
              ...measured(eye),
              chamberDepthMm: eye.chamberDepthMm,
              a0,
              a1: HAIGIS_A1,
              a2: HAIGIS_A2,
            }),
          ),
  },
];
