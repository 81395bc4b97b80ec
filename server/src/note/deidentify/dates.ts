/** How dates leave: the year alone, moved by a secret number of days, or as days since the operation. */
export type DateChoice = 'year' | 'shifted' | 'days';

const DAY = 86_400_000;
/** The farthest that a date is moved either way; enough to hide the season. */
export const LARGEST_SHIFT = 180;

export interface DateRule {
  readonly choice: DateChoice;
  /** Days by which the dates of this patient are moved; the same for all of them, so that intervals stay right. */
  readonly shift: number;
  /** Date of the operation that this record belongs to, year-month-day. */
  readonly operationDate: string | undefined;
}

/**
 * A date, or a date with a time, as it leaves; the time of day never does.
 * @returns undefined when the date cannot leave in this form: no operation to count from, or no readable date
 */
export function dateLeaving(text: string, { choice, shift, operationDate }: DateRule): string | undefined {
  const date = text.slice(0, 10);
  const time = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(time)) return undefined;
  if (choice === 'year') return date.slice(0, 4);
  if (choice === 'shifted') return new Date(time + shift * DAY).toISOString().slice(0, 10);
  if (operationDate === undefined) return undefined;
  return String(Math.round((time - Date.parse(`${operationDate}T00:00:00Z`)) / DAY));
}

/**
 * The shift of one patient, from keyed hash output that nobody can guess without the key.
 * @param hash at least eight hexadecimal digits
 * @returns whole days, never 0
 */
export function shiftFrom(hash: string): number {
  const steps = (Number.parseInt(hash.slice(0, 8), 16) % (2 * LARGEST_SHIFT)) - LARGEST_SHIFT;
  return steps >= 0 ? steps + 1 : steps;
}
