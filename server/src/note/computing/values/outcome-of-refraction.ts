import { refused, type Outcome } from '../../calculations/outcome.ts';
import { differenceFromTarget, predictionError } from '../../calculations/refraction/prediction-error.ts';
import { sphericalEquivalent } from '../../calculations/refraction/spherical-equivalent.ts';
import {
  changeAgainstTheWound,
  changeWithTheWound,
  refractiveChange,
  refractiveChangeVector,
} from '../../calculations/refraction/whole-change.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { preferredFormulas, slugOf } from '../formulas.ts';
import { amountOf, from, missing, withCautions, type Known } from '../known.ts';
import { placementCautions, predict } from '../lens-prediction.ts';
import { adjustedLength, adjustmentOf } from '../length-adjustment.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf } from '../result.ts';

interface OwnPrediction {
  readonly value: Known<number>;
  readonly by: string;
  readonly cautions: readonly string[];
}

/** Powers closer than this are the same power, written with other decimals. */
const SAME_POWER_D = 0.005;

/**
 * The refraction that was predicted for the lens in the eye: the recorded one where the planned lens went in, else
 * computed for the implanted power.
 */
export function ownPrediction(facts: OperationFacts): OwnPrediction {
  const { note, implantedLens, aphakic } = facts;
  const { plan, lens } = note;
  if (aphakic) return { value: refused('the eye was left without a lens'), by: '', cautions: [] };
  const power = amountOf(lens?.power, 'the power of the lens implanted');
  const placement = placementCautions(lens?.placed?.value);
  if (!power.ok) return { value: power, by: '', cautions: [] };
  const planned = plan?.lens?.power?.value.amount;
  const asPlanned =
    planned !== undefined &&
    Math.abs(planned - power.value) < SAME_POWER_D &&
    (lens?.model === undefined || plan?.lens?.model === undefined || lens.model.value === plan.lens.model.value);
  const formula = plan?.['predicted-by']?.value;
  if (asPlanned && plan?.predicted !== undefined)
    return {
      value: amountOf(plan.predicted, 'the recorded prediction'),
      by: `the recorded prediction${formula === undefined ? '' : ` (${formula})`}`,
      cautions: placement,
    };
  const slug = slugOf(formula) ?? preferredFormulas(facts)[0];
  if (slug === undefined)
    return { value: missing('a recorded prediction, or the formula to compute one by,'), by: '', cautions: [] };
  const adjustment = adjustmentOf(facts);
  const adjusted = adjustment === undefined ? undefined : adjustedLength(adjustment, slug, facts);
  const length: Known<number> = adjusted?.ok === true ? adjusted : facts.axialLength;
  const outcome = predict(facts, implantedLens, slug, { kind: 'refraction', powerD: power.value }, length).outcome;
  const why = asPlanned ? 'No prediction is recorded' : 'Another lens than planned was implanted';
  return {
    value: outcome,
    by: `a prediction computed by ${slug}${adjusted?.ok === true ? `, ${adjustment}` : ''}`,
    cautions: [
      `${why}; the prediction was computed for the lens in the eye.`,
      ...placement,
      ...(outcome.ok ? outcome.cautions : []),
    ],
  };
}

/** Achieved against predicted, and against the target. */
export const refractiveOutcome: Definition<FollowUpFacts> = {
  names: ['prediction-error', 'difference-from-target'],
  compute: ({ note, operation, noOperation, refraction }) => {
    if (note.refraction === undefined) return [];
    const at = spotOf(note.refraction);
    const achieved = from({ refraction: refraction.refraction }, (given) => sphericalEquivalent(given));
    const prediction = operation && ownPrediction(operation);
    const predicted = prediction?.value ?? noOperation;
    const target = operation?.target ?? noOperation;
    const error = result('prediction-error', at, { achieved, predicted }, (given) =>
      withCautions(
        predictionError({ achievedD: given.achieved, predictedD: given.predicted }),
        prediction?.cautions ?? [],
      ),
    );
    const against = { ...error, outcome: byPrediction(error.outcome, prediction?.by) };
    if (operation === undefined) return [against];
    return [
      against,
      result('difference-from-target', at, { achieved, target }, (given) =>
        differenceFromTarget({ achievedD: given.achieved, targetD: given.target }),
      ),
    ];
  },
};

function byPrediction<V>(outcome: Outcome<V>, by: string | undefined): Outcome<V> {
  return outcome.ok && by !== undefined ? { ...outcome, method: `${outcome.method}, against ${by}` } : outcome;
}

/** Whole change of the refraction at the corneal plane. */
export const changeOfRefraction: Definition<FollowUpFacts> = {
  names: ['refractive-change', 'refractive-change-vector', 'change-with-the-wound', 'change-against-the-wound'],
  compute: ({ note, operation, refraction }) => {
    if (note.refraction === undefined || operation?.refraction.refraction.ok !== true) return [];
    const at = spotOf(note.refraction);
    const inputs = {
      before: operation.refraction.refraction,
      after: refraction.refraction,
      'vertex-distance': refraction.vertexMm,
    };
    const otherVertex =
      operation.refraction.vertexMm.ok &&
      refraction.vertexMm.ok &&
      operation.refraction.vertexMm.value !== refraction.vertexMm.value;
    if (otherVertex) return [];
    const change = from(inputs, (given) =>
      refractiveChange({ before: given.before, after: given.after, vertexMm: given['vertex-distance'] }),
    );
    const wound = operation.mainIncision?.position;
    const atWound = {
      'refractive-change': change,
      'incision-position': wound ?? refused('no main incision is recorded'),
    };
    return [
      { name: 'refractive-change', at, inputs, outcome: withCautions(change, refraction.cautions) },
      result('refractive-change-vector', at, inputs, (given) =>
        refractiveChangeVector({ before: given.before, after: given.after, vertexMm: given['vertex-distance'] }),
      ),
      ...(wound === undefined
        ? []
        : [
            result('change-with-the-wound', at, atWound, (given) =>
              changeWithTheWound({ change: given['refractive-change'], wound: given['incision-position'] }),
            ),
            result('change-against-the-wound', at, atWound, (given) =>
              changeAgainstTheWound({ change: given['refractive-change'], wound: given['incision-position'] }),
            ),
          ]),
    ];
  },
};
