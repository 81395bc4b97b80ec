import { bind } from './bind.ts';
import type { Claim } from './claims.ts';
import { compose } from './compose.ts';
import type { DictationResult } from './result.ts';
import { nearMisses } from './near-miss.ts';
import { scan } from './scan.ts';
import { settle } from './settle.ts';
import { withShared } from './share.ts';
import { judgeSides, sideMentions } from './sides.ts';
import { table } from './table.ts';
import { tokensOf } from './tokens.ts';
import { lostBeside, rolesOf, stretches } from './unmatched.ts';

/** Turns a dictation into values for the fields of a note. Never throws; what it does not understand it reports. */
export function dictate(text: string): DictationResult {
  const spoken = table();
  const tokens = tokensOf(text);
  const items = nearMisses(scan(tokens, spoken), tokens, spoken);
  const { claims: said, used } = bind(items, tokens, spoken);
  const claims = withShared(said, tokens);
  const mentions = sideMentions(items, tokens, text);
  const verdict = judgeSides(mentions, tokens);
  const sideRanges = mentions
    .filter(({ role }) => role === 'asserted' || role === 'alone')
    .map(({ start, end }) => rangeOf(tokens, start, end));
  const noted = claims.filter((claim) => !claim.open && !claim.guessed);
  const lostItems = new Set(
    [...used].filter(
      (index) => !claims.some((claim) => covers(claim, items[index]!.from) && (claim.open || claim.guessed)),
    ),
  );
  const roles = rolesOf(tokens, items, lostItems, [...noted, ...sideRanges]);
  const settlement = settle(claims, (claim) => lostBeside(tokens, roles, claim.from, claim.to));
  return compose({
    text,
    settlement,
    verdict,
    mentions,
    superseded: claims.filter(({ superseded }) => superseded),
    stretches: stretches(tokens, roles),
    entries: spoken.entries,
  });
}

function covers(claim: Claim, token: number): boolean {
  return claim.from <= token && token < claim.to;
}

function rangeOf(
  tokens: readonly { readonly start: number; readonly end: number }[],
  start: number,
  end: number,
): { readonly from: number; readonly to: number } {
  const from = tokens.findIndex((token) => token.start >= start);
  const to = tokens.findIndex((token) => token.start >= end);
  return { from, to: to < 0 ? tokens.length : to };
}
