const STEP = 2;

/**
 * The indentation, in blanks, that a line is most likely to want after the lines before it: one step deeper after a
 * key that stands alone, and under the key of a list entry rather than under its dash.
 *
 * @param linesBefore the lines above, first line first
 */
export function likelyIndentation(linesBefore: readonly string[]): number {
  const last = linesBefore.findLast((line) => /^\s*[^\s#]/.test(line));
  if (last === undefined) return 0;
  const indent = /^\s*(?:- +)*/.exec(last)?.[0].length ?? 0;
  return /:\s*(?:[|>][-+0-9]*)?\s*(?: #.*)?$/.test(last) ? indent + STEP : indent;
}
