import { lensRotation } from '../../calculations/toric/rotation.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { amountOf } from '../known.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { spotOf } from '../result.ts';
import { corneaToCorrect, residualAt, rotationAt, toricLens } from './toric.ts';

/** What the turn is from the axis of the plan, where the lens was not left at it. */
function fromPlan({ note }: OperationFacts, found: number): string[] {
  const planned = note.plan?.lens?.axis;
  if (planned === undefined || planned.value.amount === note.lens?.axis?.value.amount) return [];
  const turn = lensRotation({ meant: planned.value.amount, found });
  return turn.ok
    ? [
        `Counted from the end of the operation; from the axis planned, ${planned.text}, it is ${Number(turn.value.toFixed(1))}°.`,
      ]
    : [];
}

/** A toric lens as found at the visit: how far it turned, and what that leaves. */
export const toricAtVisit: Definition<FollowUpFacts> = {
  names: ['residual-astigmatism', 'lens-rotation', 'rotation-effect'],
  compute: ({ note, operation, cornea }) => {
    const axis = note.lens?.axis;
    const cylinder = operation?.note.lens?.cylinder;
    if (axis === undefined || operation === undefined || cylinder === undefined) return [];
    const at = spotOf(axis);
    const found = amountOf(axis, 'the axis found');
    const atEnd = amountOf(operation.note.lens?.axis, 'the axis at the end of the operation');
    const lens = toricLens(operation, operation.implantedLens, amountOf(cylinder, 'the cylinder of the lens'));
    // The cornea of this visit, where it was measured, is better than any expectation.
    const measured = note.keratometry === undefined ? corneaToCorrect(operation) : cornea.usual.astigmatism;
    return [
      residualAt('residual-astigmatism', at, lens, measured, found),
      ...rotationAt(at, lens, { name: 'axis-at-end', axis: atEnd }, found, fromPlan(operation, axis.value.amount)),
    ];
  },
};
