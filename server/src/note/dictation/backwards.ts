import type { Cue } from '@sideport/schemas/spoken/cues.ts';
import type { Context } from './context.ts';
import { neighbour } from './gaps.ts';
import type { HeldNumbers } from './held-numbers.ts';
import { across, endsPart, withdraw, type Claimed } from './islands.ts';

/** "Stop and chop, quick chop I mean": the last value takes the place of the one before it. */
export function correctsBackwards(context: Context, held: HeldNumbers, cue: Cue, index: number): boolean {
  if (!endsPart(context, cue, index)) return false;
  const before = across(context, index, -1);
  const right = context.claims.find((entry) => entry.index === before);
  if (right === undefined) return doubtBefore(context, before);
  if (right.claim.field.several === true) return withdrawListBefore(context, right);
  const wrong = context.claims.findLast(
    ({ claim, index: at }) =>
      at < right.index &&
      !claim.superseded &&
      claim.field === right.claim.field &&
      claim.part === right.claim.part &&
      context.sentence(right.index) - context.sentence(at) <= 1,
  );
  if (wrong === undefined) return held.replacedBy(right.index) !== undefined;
  withdraw(context, ({ index: at, claim }) => at === wrong.index && claim.field === right.claim.field);
  return true;
}

/** "Ten and two o'clock, ten and three rather": the last list takes the place of the one before it. */
function withdrawListBefore(context: Context, right: Claimed): boolean {
  const { field } = right.claim;
  let first = right.index;
  for (let at = neighbour(context.items, first, -1); at !== undefined;) {
    const gap = context.gapOver(at, first);
    const isOfList = context.claims.some((entry) => entry.index === at && entry.claim.field === field);
    if (!isOfList || !gap.plain.includes('and') || gap.parts > 0 || gap.sentences > 0) break;
    first = at;
    at = neighbour(context.items, first, -1);
  }
  const sentence = context.sentence(right.index);
  const wrong = (entry: Claimed): boolean =>
    entry.index < first && entry.claim.field === field && context.sentence(entry.index) === sentence;
  if (!context.claims.some(wrong)) return false;
  withdraw(context, wrong);
  return true;
}

/** "Eccentric superiorly. Inferiorly, rather": what was corrected is in doubt, whatever takes its place. */
function doubtBefore(context: Context, index: number | undefined): boolean {
  if (index === undefined) return false;
  const last = context.claims.findLast((entry) => entry.index < index);
  if (last === undefined || context.sentence(index) - context.sentence(last.index) > 1) return false;
  for (const { claim } of context.claims.filter((entry) => entry.index === last.index)) claim.open = true;
  return true;
}
