import { flatteningEffect, torque } from '../../calculations/astigmatism/at-the-incision.ts';
import { inducedAstigmatism } from '../../calculations/astigmatism/induced.ts';
import {
  angleOfError,
  correctionIndex,
  differenceVector,
  flatteningIndex,
  indexOfSuccess,
  magnitudeOfError,
  targetInducedAstigmatism,
} from '../../calculations/astigmatism/treatment.ts';
import { refused } from '../../calculations/outcome.ts';
import type { Vector } from '../../calculations/quantities.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { from, withCautions, type Known } from '../known.ts';
import { result, type Spot } from '../result.ts';

const NONE: Known<Vector> = { ok: true, value: { magnitude: 0, axis: null }, unit: 'D' };

/** What the operation did to the cornea, by keratometry before and at this visit, both under the usual index. */
export const changeOfCornea: Definition<FollowUpFacts> = {
  names: ['induced-astigmatism', 'flattening-effect', 'torque'],
  compute: (facts) => {
    const place = spotOfKeratometry(facts);
    if (place === undefined) return [];
    const { before, after, induced } = corneas(facts);
    const incision = facts.operation?.mainIncision?.position ?? refused('no main incision is recorded');
    const atIncision = { 'induced-astigmatism': induced, 'incision-position': incision };
    return [
      { name: 'induced-astigmatism', at: place, inputs: { before, after }, outcome: induced },
      result('flattening-effect', place, atIncision, (given) =>
        flatteningEffect({ induced: given['induced-astigmatism'], meridian: given['incision-position'] }),
      ),
      result('torque', place, atIncision, (given) =>
        torque({ induced: given['induced-astigmatism'], meridian: given['incision-position'] }),
      ),
    ];
  },
};

/** The change held against the one that would have left no corneal astigmatism. */
export const treatmentOfCornea: Definition<FollowUpFacts> = {
  names: [
    'target-induced-astigmatism',
    'difference-vector',
    'magnitude-of-error',
    'angle-of-error',
    'correction-index',
    'flattening-index',
    'index-of-success',
  ],
  compute: (facts) => {
    const at = spotOfKeratometry(facts);
    const { before, after, induced } = corneas(facts);
    if (at === undefined || !induced.ok) return [];
    const cautions = [targetCaution(facts)];
    const aimed = withCautions(
      from({ before, target: NONE }, (given) => targetInducedAstigmatism(given)),
      cautions,
    );
    const left = withCautions(
      from({ target: NONE, after }, (given) => differenceVector(given)),
      cautions,
    );
    const pair = { induced, aimed };
    return [
      { name: 'target-induced-astigmatism', at, inputs: { before, target: NONE }, outcome: aimed },
      { name: 'difference-vector', at, inputs: { target: NONE, after }, outcome: left },
      result('magnitude-of-error', at, pair, (given) => withCautions(magnitudeOfError(given), cautions)),
      result('angle-of-error', at, pair, (given) => withCautions(angleOfError(given), cautions)),
      result('correction-index', at, pair, (given) => withCautions(correctionIndex(given), cautions)),
      result('flattening-index', at, pair, (given) => withCautions(flatteningIndex(given), cautions)),
      result('index-of-success', at, { difference: left, aimed }, (given) =>
        withCautions(indexOfSuccess(given), cautions),
      ),
    ];
  },
};

function targetCaution({ operation }: FollowUpFacts): string {
  const toric = operation?.note.lens?.cylinder !== undefined;
  return toric
    ? 'The cornea alone, with no corneal astigmatism as target; the lens was to correct it, so judge by the refraction.'
    : 'The target is taken as no corneal astigmatism; the plan does not record another.';
}

/** Both corneas under one index, and what was added between them. */
export function corneas({ operation, noOperation, cornea }: FollowUpFacts) {
  const before = operation?.cornea.usual.astigmatism ?? noOperation;
  const after = cornea.usual.astigmatism;
  const earlier: Known<Vector> = before.ok ? before : refused(`before the operation: ${before.because}`);
  const induced = from({ before: before.ok || operation === undefined ? before : earlier, after }, (given) =>
    inducedAstigmatism(given),
  );
  return { before, after, induced };
}

function spotOfKeratometry({ note, spot }: FollowUpFacts): Spot | undefined {
  const { keratometry } = note;
  return keratometry === undefined ? undefined : spot(keratometry.k2, keratometry.k1, keratometry.$);
}
