import type { Amount } from './spoken-amounts.ts';

/**
 * A number of which only the end was corrected: "five point one, no, point three" is 5.3, "two point two, sorry, four"
 * may be 2.4. Undefined where the second number is whole by itself. What it gives is a guess.
 */
export function completedNumber(before: Amount, now: Amount): Pick<Amount, 'value' | 'written'> | undefined {
  const whole = Math.trunc(before.value);
  if (now.value < 0 || whole < 1 || now.signed) return undefined;
  if (now.value > 0 && now.value < 1 && now.written.startsWith('0.')) return joined(whole, now.written.slice(2));
  const isDigit = /^\d$/u.test(now.written) && now.unit === undefined;
  return isDigit && /^[+-]?\d+\.\d$/u.test(before.written) ? joined(whole, now.written) : undefined;
}

function joined(whole: number, decimals: string): Pick<Amount, 'value' | 'written'> {
  const written = `${whole}.${decimals}`;
  return { value: Number(written), written };
}
