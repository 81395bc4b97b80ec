import type { Conflict, DictatedValue, Withdrawn } from './result.ts';
import type { SideMention, SideVerdict } from './sides.ts';

/** The operated side as a value of the note, with its contradiction where there is one. */
export function sideResult(
  text: string,
  verdict: SideVerdict,
): { readonly values: readonly DictatedValue[]; readonly conflicts: readonly Conflict[] } {
  const { from, side, doubt, contradicting } = verdict;
  if (from === undefined) return { values: [], conflicts: [] };
  const value: DictatedValue = {
    path: ['eye'],
    value: side ?? null,
    text: text.slice(from.start, from.end),
    start: from.start,
    end: from.end,
    state: side === undefined ? 'unresolved' : 'proposed',
    because: doubt ?? 'the side asks for confirmation or a second source, however clearly it was said',
    ...(doubt === undefined ? {} : { doubted: true }),
  };
  if (doubt === undefined) return { values: [value], conflicts: [] };
  const candidates = (contradicting.length > 0 ? contradicting : [from]).map((mention) => ({
    value: mention.side ?? '',
    text: text.slice(mention.start, mention.end),
    start: mention.start,
    end: mention.end,
  }));
  return { values: [value], conflicts: [{ path: ['eye'], because: doubt, candidates }] };
}

/** Sides that a word of correction withdrew. */
export function sidesWithdrawn(text: string, mentions: readonly SideMention[]): readonly Withdrawn[] {
  return mentions
    .filter(({ superseded, side }) => superseded && side !== undefined)
    .map(({ side, start, end }) => ({ path: ['eye'], value: side ?? '', text: text.slice(start, end), start, end }));
}
