import { describe, expect, test } from 'vitest';
import { audit } from '../../server/src/note/audit/audit.ts';
import { mergePartials } from '../../server/src/note/audit/partial.ts';
import { makeYear, type YearFile } from '../../tools/year/make-year.ts';
import { AS_OF, factsOfNotes } from './year.ts';

const files: readonly YearFile[] = [...makeYear({ operations: 240 })];

function parts(count: number): readonly YearFile[][] {
  return Array.from({ length: count }, (_, part) => files.filter((_file, at) => at % count === part));
}

describe('parts of a set', () => {
  const whole = JSON.stringify(audit(factsOfNotes(files), { asOf: AS_OF, suppressBelow: 0 }));

  test.each([2, 3, 7])('%i parts, in any order, merge to the same audit, byte for byte', (count) => {
    const partials = parts(count).map((part) => factsOfNotes(part));
    for (const order of [partials, partials.toReversed()]) {
      expect(JSON.stringify(audit(mergePartials(order), { asOf: AS_OF, suppressBelow: 0 }))).toBe(whole);
    }
  });

  test('a part survives being written and read', () => {
    const [first, second] = parts(2).map((part) => factsOfNotes(part));
    const again = [first, second].map((part) => JSON.parse(JSON.stringify(part)));
    expect(JSON.stringify(audit(mergePartials(again), { asOf: AS_OF, suppressBelow: 0 }))).toBe(whole);
  });

  test('facts are short and hold no prose of the notes', () => {
    const partial = factsOfNotes(files.slice(0, 20));
    const text = JSON.stringify(partial);
    expect(text.length / (partial.operations.length + partial.followUps.length)).toBeLessThan(1500);
    expect(text).not.toContain('glare');
  });
});
