import { describe, expect, it } from 'vitest';
import { keys, ownExamples, referenceExamples, score } from './score.ts';

describe('the fifteen reference dictations', () => {
  const result = score(referenceExamples);

  it('are filled without a wrong value, a wrong side or a withdrawn one', () => {
    expect(referenceExamples).toHaveLength(15);
    expect(result.wrongFilled).toEqual([]);
    expect(result.wrongSide).toEqual([]);
    expect(result.criticalWrong).toEqual([]);
    expect(result.leaked).toEqual([]);
  });

  it('are recalled in at least 97 of 100 values, where they were said', () => {
    expect(result.found / result.expected, result.missed.join('\n')).toBeGreaterThanOrEqual(0.97);
    expect(result.misplaced).toEqual([]);
  });

  it('ask for confirmation where they must, and lose no stretch', () => {
    expect(result.unconfirmed).toEqual([]);
    expect(result.unreported).toEqual([]);
  });
});

describe('dictations of our own', () => {
  const result = score(ownExamples);

  it('are many, in many voices, and reach every key and every value', () => {
    expect(ownExamples.length + referenceExamples.length).toBeGreaterThanOrEqual(75);
    const said = [...ownExamples, ...referenceExamples].flatMap(({ expected, soft }) => [
      ...Object.entries(expected),
      ...Object.entries(soft),
    ]);
    const reached = new Set(said.flatMap(([key, value]) => [value].flat().map((one) => `${key} ${String(one)}`)));
    const unreached = Object.entries(keys).flatMap(([key, { type, values, of }]) => {
      const words = Array.isArray(values) ? values : Array.isArray(of) ? (of as readonly string[]) : undefined;
      if (words !== undefined)
        return words.filter((word) => !reached.has(`${key} ${word}`)).map((word) => `${key} ${word}`);
      return [...reached].some((one) => one.startsWith(`${key} `)) ? [] : [`${key} (${type})`];
    });
    expect(unreached).toEqual([]);
  });

  it('are filled without a wrong value, a wrong side or a withdrawn one', () => {
    expect(result.wrongFilled).toEqual([]);
    expect(result.wrongSide).toEqual([]);
    expect(result.criticalWrong).toEqual([]);
    expect(result.leaked).toEqual([]);
  });

  it('are recalled in at least 97 of 100 values, and ask for confirmation where they must', () => {
    expect(result.found / result.expected, result.missed.join('\n')).toBeGreaterThanOrEqual(0.97);
    expect(result.unconfirmed).toEqual([]);
    expect(result.unreported).toEqual([]);
  });
});
