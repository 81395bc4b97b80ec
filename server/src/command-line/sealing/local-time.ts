const two = (value: number): string => String(Math.floor(Math.abs(value))).padStart(2, '0');

/** A moment as the clock on the wall shows it, with its offset: 2031-03-14T10:02:00+01:00. */
export function withOffset(moment: Date): string {
  const minutes = -moment.getTimezoneOffset();
  const wall = new Date(moment.getTime() + minutes * 60_000).toISOString().slice(0, 19);
  return `${wall}${minutes < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`;
}
