import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { amountOf } from '../known.ts';
import { spotOf } from '../result.ts';
import { corneaToCorrect, residualAt, rotationAt, toricLens } from './toric.ts';

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
    return [residualAt('residual-astigmatism', at, lens, measured, found), ...rotationAt(at, lens, atEnd, found)];
  },
};
