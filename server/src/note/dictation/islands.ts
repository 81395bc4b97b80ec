import type { Cue } from '@sideport/schemas/spoken/cues.ts';
import type { Context } from './context.ts';
import { neighbour } from './gaps.ts';

/** A claim with the position of its island. */
export type Claimed = Context['claims'][number];

/** The island beyond the words of correction at a position, and beyond phrases that say nothing. */
export function across(context: Context, index: number, step: 1 | -1): number | undefined {
  const { items } = context;
  for (let at = index; ;) {
    const next = neighbour(items, at, step);
    if (next === undefined) return undefined;
    const gap = step === 1 ? context.gapOver(at, next) : context.gapOver(next, at);
    if (gap.content > 0 || (step === -1 && gap.sentences > 0)) return undefined;
    if (!items[next]!.meanings.some(({ kind }) => kind === 'cue')) return next;
    at = next;
  }
}

/** Whether a word that may correct backwards stands at the end of a part of its sentence. */
export function endsPart(context: Context, { after }: Cue, index: number): boolean {
  const next = context.tokens[context.items[index]!.to];
  return after === true && (next === undefined || next.kind === 'break');
}

/** The last island of the sentence before, when a word of correction begins its own. */
export function sentenceBefore(context: Context, index: number): number | undefined {
  const last = neighbour(context.items, index, -1);
  if (last === undefined) return undefined;
  const gap = context.gapOver(last, index);
  return gap.content === 0 && gap.sentences === 1 ? last : undefined;
}

/** Withdraws what was claimed. */
export function withdraw(context: Context, which: (entry: Claimed) => boolean): void {
  for (const entry of context.claims) if (which(entry)) entry.claim.superseded = true;
}
