/** A length of time in minutes and seconds: 1:24, 0:32, 1 min 24 s. */
const shape = String.raw`(\d{1,2})(?::([0-5]\d)|\s*(?:m|mins?|minutes?)\s*([0-5]?\d)\s*(?:s|secs?|seconds?)?)`;

/** Pattern of a length of time in minutes and seconds, for the published JSON Schema. */
export const MINUTES_AND_SECONDS = shape;

const whole = new RegExp(`^${shape}$`, 'iu');

/** Minutes and seconds in seconds, or undefined where a text is something else. */
export function secondsIn(text: string): number | undefined {
  const match = whole.exec(text.trim());
  return match === null ? undefined : 60 * Number(match[1]) + Number(match[2] ?? match[3]);
}
