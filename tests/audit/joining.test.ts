import { describe, expect, test } from 'vitest';
import { audit } from '../../server/src/note/audit/audit.ts';
import { joinCases } from '../../server/src/note/audit/cases.ts';
import type { FollowUpFacts, OperationFacts } from '../../server/src/note/audit/facts.ts';
import { mergePartials } from '../../server/src/note/audit/partial.ts';
import { OPERATION, VISIT } from './facts.ts';

function join(operations: readonly OperationFacts[], followUps: readonly FollowUpFacts[]) {
  return joinCases(mergePartials([{ version: 1, operations, followUps, amendments: [], unreadable: 0 }]));
}

const oblique = (meridian: number) => ({ site: 'superotemporal', meridian, widthMm: 2.2 });

describe('joining', () => {
  test('prediction error and induced astigmatism, as defined in the published sources', () => {
    const [one] = join([OPERATION], [VISIT]).cases;
    // Hoffer et al. 2015: achieved minus predicted. Jaffe and Clayman 1975: 1.50 at 90 to 0.75 at 90 is 0.75 at 180.
    expect(one?.predictionError).toBeCloseTo(-0.7, 12);
    expect(one?.induced?.vector.magnitude).toBeCloseTo(0.75, 12);
    expect(one?.induced?.vector.axis).toBeCloseTo(180, 9);
    // Steeper at 180 is steeper across an incision at 90: 90 degrees from it, all of it flattening.
    expect(one?.induced?.fromIncision.axis).toBeCloseTo(90, 9);
    expect(one?.induced?.flatteningD).toBeCloseTo(0.75, 12);
    expect(one?.induced?.torqueD).toBeCloseTo(0, 12);
  });

  test('temporal incisions of right and left eyes agree when counted from the incision', () => {
    const left = { ...OPERATION, id: 'OP-2', eye: 'left' as const };
    const rightCase = join(
      [{ ...OPERATION, incision: oblique(135), corneaBefore: { magnitude: 1, axis: 135 } }],
      [{ ...VISIT, cornea: { magnitude: 0.5, axis: 135 } }],
    ).cases[0];
    const leftCase = join(
      [{ ...left, incision: oblique(45), corneaBefore: { magnitude: 1, axis: 45 } }],
      [{ ...VISIT, operation: 'OP-2', cornea: { magnitude: 0.5, axis: 45 } }],
    ).cases[0];
    expect(rightCase?.induced?.fromIncision.axis).toBeCloseTo(leftCase?.induced?.fromIncision.axis ?? NaN, 9);
    expect(rightCase?.induced?.flatteningD).toBeCloseTo(0.5, 12);
  });

  test('a visit counts inside its window only, the last one of several', () => {
    const early = { ...VISIT, id: 'FU-0', date: '2024-03-20', refractionD: 2 };
    const middle = { ...VISIT, id: 'FU-2', date: '2024-04-01', refractionD: 0 };
    const late = { ...VISIT, id: 'FU-3', date: '2026-01-01', refractionD: 3 };
    const [one] = join([OPERATION], [late, VISIT, early, middle]).cases;
    expect(one?.refraction).toEqual({ value: -1, days: 31 });
    expect(one?.visits.map((visit) => visit.id)).toEqual(['FU-0', 'FU-2', 'FU-1', 'FU-3']);
  });

  test('what cannot be joined or counted is counted as such', () => {
    const joined = join(
      [
        OPERATION,
        { ...OPERATION, surgeon: 'S-2' },
        { ...OPERATION, id: 'OP-3', status: 'draft' },
        { ...OPERATION, id: 'OP-4', date: null },
      ],
      [
        VISIT,
        { ...VISIT, id: 'FU-9', operation: 'OP-99' },
        { ...VISIT, id: 'FU-8', date: '2024-01-01' },
        { ...VISIT, id: 'FU-7', operation: null },
      ],
    );
    expect(joined).toMatchObject({ notFinal: 1, undated: 1, repeatedIds: 1, unjoined: 2, misdated: 1 });
    expect(joined.cases.length).toBe(1);
  });
});

test('an amended note is counted as it was signed, and said to be amended', () => {
  const amendment = { record: 'amendment', id: 'AM-1', amends: 'OP-1' } as const;
  const partial = mergePartials([
    { version: 1, operations: [OPERATION], followUps: [], amendments: [amendment, amendment], unreadable: 0 },
  ]);
  const result = audit(partial, { asOf: '2025-01-01', suppressBelow: 0 });
  expect(result.set.amendments).toBe(2);
  expect(result.standOuts).toContainEqual(expect.objectContaining({ kind: 'amended-notes', notes: ['OP-1'] }));
});
