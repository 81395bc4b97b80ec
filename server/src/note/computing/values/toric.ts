import type { Outcome } from '../../calculations/outcome.ts';
import type { Vector } from '../../calculations/quantities.ts';
import { cornealPlaneCylinder, lensPlaneCylinder, toricRatio } from '../../calculations/toric/lens-plane.ts';
import { residualAstigmatism } from '../../calculations/toric/residual.ts';
import { lensRotation, rotationEffect } from '../../calculations/toric/rotation.ts';
import type { Definition } from '../definition.ts';
import type { LensEntry } from '../department-entries.ts';
import { preferredFormulas } from '../formulas.ts';
import { amountOf, from, known, withCautions, type Known } from '../known.ts';
import { lensPosition } from '../lens-prediction.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf, type Result, type Spot } from '../result.ts';

/** A toric lens in this eye: what its cylinder is worth at the cornea. */
export interface ToricLens {
  readonly position: Outcome<number>;
  readonly flat: Known<number>;
  readonly steep: Known<number>;
  readonly ratio: Outcome<number>;
  readonly cylinder: Known<number>;
  readonly atCornea: Outcome<number>;
}

/** The cylinder of a lens brought to the corneal plane by this eye's own ratio. */
export function toricLens(facts: OperationFacts, lens: LensEntry, cylinder: Known<number>): ToricLens {
  const { mean, astigmatism } = facts.cornea.usual;
  const half = from({ mean, astigmatism }, (cornea) =>
    known(
      { flat: cornea.mean - cornea.astigmatism.magnitude / 2, steep: cornea.mean + cornea.astigmatism.magnitude / 2 },
      '',
    ),
  );
  const flat = from({ half }, (cornea) => known(cornea.half.flat, '', 'D'));
  const steep = from({ half }, (cornea) => known(cornea.half.steep, '', 'D'));
  const position = lensPosition(facts, lens, preferredFormulas(facts));
  const ratio = from({ flat, steep, position }, (eye) =>
    toricRatio({ flatD: eye.flat, steepD: eye.steep, lensPositionMm: eye.position }),
  );
  const atCornea = from({ cylinder, ratio }, (given) =>
    cornealPlaneCylinder({ lensCylinderD: given.cylinder, ratio: given.ratio }),
  );
  return { position, flat, steep, ratio, cylinder, atCornea };
}

/** The cornea that the lens has to correct: expected after the operation, else as measured before. */
export function corneaToCorrect({ expectedCornea, cornea }: OperationFacts): Outcome<Vector> {
  if (expectedCornea.ok) return expectedCornea;
  return withCautions(cornea.astigmatism, [
    `The cornea before the operation is taken, because what the incision does is not known: ${expectedCornea.because}.`,
  ]);
}

/** Astigmatism left with the marks at an axis. */
export function residualAt(
  name: 'residual-astigmatism',
  at: Spot,
  lens: ToricLens,
  cornea: Outcome<Vector>,
  axis: Known<number>,
): Result {
  const inputs = { 'corneal-astigmatism': cornea, 'corneal-plane-cylinder': lens.atCornea, axis };
  return result(name, at, inputs, (given) =>
    withCautions(
      residualAstigmatism({
        corneal: given['corneal-astigmatism'],
        lensCylinderD: given['corneal-plane-cylinder'],
        markAxis: given.axis,
      }),
      cornea.ok ? cornea.cautions : [],
    ),
  );
}

/**
 * The turn of a lens from the axis it was meant for, or from that at the end of the operation, and what the turn alone
 * adds.
 */
export function rotationAt(
  at: Spot,
  lens: ToricLens,
  { name, axis }: { readonly name: 'axis-meant' | 'axis-at-end'; readonly axis: Known<number> },
  found: Known<number>,
  cautions: readonly string[] = [],
): readonly Result[] {
  const inputs = { [name]: axis, 'axis-found': found };
  const turn = withCautions(
    from({ axis, found }, (axes) => lensRotation({ meant: axes.axis, found: axes.found })),
    cautions,
  );
  return [
    { name: 'lens-rotation', at, inputs, outcome: turn },
    result('rotation-effect', at, { 'corneal-plane-cylinder': lens.atCornea, 'lens-rotation': turn }, (given) =>
      rotationEffect({
        cornealD: given['corneal-plane-cylinder'],
        lensD: given['corneal-plane-cylinder'],
        rotation: given['lens-rotation'],
      }),
    ),
  ];
}

function cylinderResults(lens: ToricLens, at: Spot): readonly Result[] {
  const { flat, steep, position, ratio, cylinder } = lens;
  const eye = { 'flat-keratometry': flat, 'steep-keratometry': steep, 'lens-position': position };
  return [
    result('lens-plane-cylinder', at, eye, (given) =>
      lensPlaneCylinder({
        flatD: given['flat-keratometry'],
        steepD: given['steep-keratometry'],
        lensPositionMm: given['lens-position'],
      }),
    ),
    { name: 'toric-ratio', at, inputs: eye, outcome: ratio },
    { name: 'corneal-plane-cylinder', at, inputs: { cylinder, 'toric-ratio': ratio }, outcome: lens.atCornea },
  ];
}

/** A toric lens as planned and as implanted. */
export const toricLenses: Definition<OperationFacts> = {
  names: [
    'lens-plane-cylinder',
    'toric-ratio',
    'corneal-plane-cylinder',
    'residual-astigmatism',
    'lens-rotation',
    'rotation-effect',
  ],
  beside: ['plan', 'lens'],
  compute: (facts) => {
    const { note, plannedLens, implantedLens, aphakic } = facts;
    const planned = note.plan?.lens;
    const placed = aphakic ? undefined : note.lens;
    const meant = amountOf(planned?.axis, 'the planned axis');
    const cornea = corneaToCorrect(facts);
    const results: Result[] = [];
    if (planned?.cylinder !== undefined) {
      const lens = toricLens(facts, plannedLens, amountOf(planned.cylinder, 'the planned cylinder'));
      results.push(
        ...cylinderResults(lens, spotOf(planned.cylinder)),
        residualAt('residual-astigmatism', spotOf(planned.axis ?? planned.cylinder), lens, cornea, meant),
      );
    }
    if (placed?.cylinder !== undefined) {
      const lens = toricLens(facts, implantedLens, amountOf(placed.cylinder, 'the cylinder of the lens'));
      const found = amountOf(placed.axis, 'the axis of the lens');
      const at = spotOf(placed.axis ?? placed.cylinder);
      results.push(
        ...cylinderResults(lens, spotOf(placed.cylinder)),
        residualAt('residual-astigmatism', at, lens, cornea, found),
        ...(planned?.axis === undefined ? [] : rotationAt(at, lens, { name: 'axis-meant', axis: meant }, found)),
      );
    }
    return results;
  },
};
