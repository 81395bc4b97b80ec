// Whatever is put in, a calculation answers a sound value or a reason: it never throws and never answers NaN.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Outcome } from '../../server/src/note/calculations/outcome.ts';
import { CALCULATIONS } from '../../server/src/note/calculations/list.ts';

const odd = fc.constantFrom<unknown>(NaN, Infinity, -Infinity, 0, -0, 1e300, -1e-300, null, undefined, '', 'x', [], {});

/** Values near the example's: the same shape, each number moved a little or far. */
function near(value: unknown): fc.Arbitrary<unknown> {
  if (typeof value === 'number')
    return fc.oneof(
      { weight: 6, arbitrary: fc.double({ min: value - 12, max: value + 12, noNaN: true }) },
      { weight: 3, arbitrary: fc.double({ min: -200, max: 400, noNaN: true }) },
      { weight: 1, arbitrary: odd },
    );
  if (Array.isArray(value)) return fc.tuple(...value.map(near));
  if (typeof value === 'object' && value !== null) {
    const parts = Object.entries(value).map(([key, part]): [string, fc.Arbitrary<unknown>] => [key, near(part)]);
    return fc.record(Object.fromEntries(parts));
  }
  return fc.oneof({ weight: 5, arbitrary: fc.constant(value) }, { weight: 1, arbitrary: odd });
}

function soundIn(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return value !== undefined;
  return Object.values(value).every(soundIn);
}

test.each(CALCULATIONS.map((listed) => [listed.about.name, listed] as const))('%s', (_name, listed) => {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- what a caller without types may hand in
  const run = listed as unknown as (input: unknown) => Outcome<unknown>;
  fc.assert(
    fc.property(
      fc.oneof({ weight: 19, arbitrary: near(listed.about.example.input) }, { weight: 1, arbitrary: odd }),
      (input) => {
        const outcome = run(input);
        expect(outcome.ok ? soundIn(outcome.value) : outcome.because.length > 10).toBe(true);
        expect(run(input)).toEqual(outcome);
      },
    ),
    { numRuns: 300 },
  );
});
