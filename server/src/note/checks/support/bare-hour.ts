/** Whether a bare number, read as degrees, may as well have been meant as an hour of the clock. */
export function mayBeHour(text: string): boolean {
  return /^\s*(?:[1-9]|1[0-2])\s*$/u.test(text);
}
