import { describe, expect, test } from 'vitest';
import { audit } from '../../server/src/note/audit/audit.ts';
import { mergePartials } from '../../server/src/note/audit/partial.ts';
import { auditText } from '../../server/src/note/audit/report/text.ts';
import { operation, VISIT } from './facts.ts';

// The set as it stood on a day: an audit of last year must not change when this year's notes are added.
const operations = [operation({}), operation({ id: 'OP-2', date: '2024-06-30' })];
const early = mergePartials([{ version: 1, operations, followUps: [VISIT], amendments: [], unreadable: 0 }]);
const whole = mergePartials([
  early,
  {
    version: 1,
    operations: [operation({ id: 'OP-3', date: '2024-07-01' })],
    followUps: [{ ...VISIT, id: 'FU-2', date: '2024-07-02', refractionD: 1 }],
    amendments: [],
    unreadable: 0,
  },
]);

describe('the day of the audit', () => {
  test('what is dated later is not counted', () => {
    const asOf = '2024-06-30';
    const { set, ...figures } = audit(whole, { asOf, suppressBelow: 0 });
    const { set: before, ...expected } = audit(early, { asOf, suppressBelow: 0 });
    expect(figures).toEqual(expected);
    expect(set).toEqual({ ...before, later: 2 });
  });
  test('and is said', () => {
    const text = auditText(audit(whole, { asOf: '2024-06-30', suppressBelow: 0 }));
    expect(text).toContain('2 final operations from 2024-03-14 to 2024-06-30, 1 follow-ups; audited as of 2024-06-30.');
    expect(text).toContain('2 notes are dated after the day of the audit and are not counted.');
  });
  test('the day itself counts', () => {
    expect(audit(whole, { asOf: '2024-07-02', suppressBelow: 0 }).set).toMatchObject({
      operations: 3,
      followUps: 2,
      later: 0,
    });
  });
});
