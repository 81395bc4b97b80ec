import type { Outcome } from '../../server/src/note/calculations/outcome.ts';

/** The value of an outcome that must be one. */
export function answer<V>(outcome: Outcome<V>): V {
  if (!outcome.ok) throw new Error(`refused: ${outcome.because}`);
  return outcome.value;
}

/** The reason of an outcome that must be a refusal. */
export function reason(outcome: Outcome<unknown>): string {
  if (outcome.ok) throw new Error(`not refused: ${JSON.stringify(outcome.value)}`);
  return outcome.because;
}

/** The cautions of an outcome that must be a value, as one text. */
export function cautions(outcome: Outcome<unknown>): string {
  if (!outcome.ok) throw new Error(`refused: ${outcome.because}`);
  return outcome.cautions.join('\n');
}

/** Says where two plain values differ by more than a tolerance, or nothing. */
export function unlike(actual: unknown, expected: unknown, within: number, at = 'value'): string | undefined {
  if (typeof expected === 'number' && typeof actual === 'number')
    return Math.abs(actual - expected) <= within ? undefined : `${at}: ${actual} instead of ${expected}`;
  if (typeof expected !== 'object' || expected === null || typeof actual !== 'object' || actual === null)
    return Object.is(actual, expected) ? undefined : `${at}: ${String(actual)} instead of ${String(expected)}`;
  const keys = new Set([...Object.keys(actual), ...Object.keys(expected)]);
  for (const key of keys) {
    const found = unlike(Reflect.get(actual, key), Reflect.get(expected, key), within, `${at}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}
