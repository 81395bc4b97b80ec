import type { NoteReading } from '../reading/note-reading.ts';
import { withNote } from './agreement.ts';
import { bind } from './bind.ts';
import type { Claim } from './claims.ts';
import { compose } from './compose.ts';
import { mendedTokens } from './mended-tokens.ts';
import { nearMisses } from './near-miss.ts';
import { NoteView } from './note-view.ts';
import type { DictationResult } from './result.ts';
import { scan } from './scan.ts';
import { settle } from './settle.ts';
import { withShared } from './share.ts';
import { judgeSides, sideMentions, type SideMention } from './sides.ts';
import { table } from './table.ts';
import { tokensOf, type Token } from './tokens.ts';
import { lostBeside, rolesOf, stretches } from './unmatched.ts';

/** What the words of a dictation say, whatever note they belong to. */
type Understood = Omit<Parameters<typeof compose>[0], 'view'>;

/** What was last understood, kept by whoever asks: while a note is written, its dictation mostly stays as it is. */
export interface DictationMemory {
  last?: Understood;
}

/**
 * Turns a dictation into values for the fields of a note. Never throws; what it does not understand it reports.
 * With a note, values that it says already are found there: the same is filled, another is left to the surgeon.
 */
export function dictate(text: string, reading?: NoteReading, memory: DictationMemory = {}): DictationResult {
  if (memory.last?.text !== text) memory.last = understand(text);
  const view = new NoteView(reading);
  const result = compose({ ...memory.last, view });
  return reading === undefined ? result : withNote(result, view);
}

function understand(text: string): Understood {
  const spoken = table();
  const tokens = mendedTokens(tokensOf(text));
  const items = nearMisses(scan(tokens, spoken), tokens, spoken);
  const bound = bind(items, tokens, spoken);
  const claims = withShared(bound.claims, tokens);
  const mentions = sideMentions(items, tokens, text);
  const noted = claims.filter((claim) => !claim.open && !claim.guessed);
  const unnoted = claims.filter((claim) => claim.open || claim.guessed);
  const used = new Set([...bound.used].filter((index) => !unnoted.some((claim) => covers(claim, items[index]!.from))));
  const roles = rolesOf(tokens, items, used, [...noted, ...sideRanges(mentions, tokens)]);
  return {
    text,
    settlement: settle(claims, (claim) => lostBeside(tokens, roles, claim.from, claim.to)),
    verdict: judgeSides(mentions, tokens),
    mentions,
    superseded: claims.filter(({ superseded }) => superseded),
    stretches: stretches(tokens, roles),
    entries: spoken.entries,
  };
}

function covers(claim: Claim, token: number): boolean {
  return claim.from <= token && token < claim.to;
}

/** The tokens of every side that is accounted for; of a withdrawn one with the words that withdraw it. */
function sideRanges(
  mentions: readonly SideMention[],
  tokens: readonly Token[],
): readonly { readonly from: number; readonly to: number }[] {
  return mentions.flatMap(({ role, start, end, superseded }, at) => {
    if (role !== 'asserted' && role !== 'alone') return [];
    const until = superseded ? (mentions[at + 1]?.start ?? end) : end;
    const to = tokens.findIndex((token) => token.start >= until);
    return [{ from: tokens.findIndex((token) => token.start >= start), to: to < 0 ? tokens.length : to }];
  });
}
