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
import { refused, type Outcome } from '../../calculations/outcome.ts';
import type { Vector } from '../../calculations/quantities.ts';
import { refractiveAstigmatism } from '../../calculations/refraction/refractive-astigmatism.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { from, withCautions, type Known } from '../known.ts';
import { result, spotOf, type Spot } from '../result.ts';

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

/** What the operation's note lacks is said to be lacking there, not in the note of the visit. */
function earlier<T>(known: Known<T> | undefined): Known<T> | undefined {
  return known === undefined || known.ok ? known : refused(`before the operation, ${known.because}`);
}

/** Both corneas under one index, and what was added between them. */
function corneas({ operation, noOperation, cornea }: FollowUpFacts) {
  const before = earlier(operation?.cornea.usual.astigmatism) ?? noOperation;
  const after = cornea.usual.astigmatism;
  return { before, after, induced: from({ before, after }, inducedAstigmatism) };
}

function spotOfKeratometry({ note, spot }: FollowUpFacts): Spot | undefined {
  const { keratometry } = note;
  return keratometry === undefined ? undefined : spot(keratometry.k2, keratometry.k1, keratometry.$);
}

/** What is judged: the cornea before and after, or, of a toric lens, the cornea before and the refraction after. */
interface Judged {
  readonly at: Spot;
  readonly after: Known<Vector>;
  readonly caution: string;
}

function judged(facts: FollowUpFacts): Judged | undefined {
  const { operation, note, refraction } = facts;
  if (operation?.note.lens?.cylinder === undefined) {
    const at = spotOfKeratometry(facts);
    const caution = 'The target is taken as no corneal astigmatism; the plan does not record another.';
    return at && { at, after: facts.cornea.usual.astigmatism, caution };
  }
  if (note.refraction === undefined) return undefined;
  return {
    at: spotOf(note.refraction),
    after: from({ given: refraction.refraction, vertex: refraction.vertexMm }, ({ given, vertex }) =>
      refractiveAstigmatism({ refraction: given, vertexMm: vertex }),
    ),
    caution:
      'Toric lens: the cornea before against the refraction after, at the corneal plane; the target is taken as no astigmatism.',
  };
}

/** The change held against the one that would have left no astigmatism. */
export const treatmentOfAstigmatism: Definition<FollowUpFacts> = {
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
    const what = judged(facts);
    const { before } = corneas(facts);
    if (what === undefined || !before.ok || !what.after.ok) return [];
    const { at, after } = what;
    const said = <V>(outcome: Outcome<V>): Outcome<V> => withCautions(outcome, [what.caution]);
    const induced = from({ before, after }, inducedAstigmatism);
    const aimed = from({ before, target: NONE }, targetInducedAstigmatism);
    const left = from({ target: NONE, after }, differenceVector);
    const pair = { induced, aimed };
    return [
      { name: 'target-induced-astigmatism', at, inputs: { before, target: NONE }, outcome: said(aimed) },
      { name: 'difference-vector', at, inputs: { target: NONE, after }, outcome: said(left) },
      result('magnitude-of-error', at, pair, (given) => said(magnitudeOfError(given))),
      result('angle-of-error', at, pair, (given) => said(angleOfError(given))),
      result('correction-index', at, pair, (given) => said(correctionIndex(given))),
      result('flattening-index', at, pair, (given) => said(flatteningIndex(given))),
      result('index-of-success', at, { difference: left, aimed }, (given) => said(indexOfSuccess(given))),
    ];
  },
};
