import { plainWords } from '@sideport/schemas/spoken/plain-words.ts';
import { hesitations } from './phrases.ts';
import type { Item } from './scan.ts';
import type { Token } from './tokens.ts';

/** A stretch of the dictation that no field took. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What a token is to the note: taken by a field, unexplained, or without a fact of its own. */
export type TokenRole = 'taken' | 'lost' | 'plain';

/** The role of each token. `taken` are the token ranges whose words are accounted for. */
export function rolesOf(
  tokens: readonly Token[],
  items: readonly Item[],
  used: ReadonlySet<number>,
  takenRanges: readonly { readonly from: number; readonly to: number }[],
): readonly TokenRole[] {
  const roles: TokenRole[] = tokens.map((token) =>
    token.kind === 'break' || hesitations.has(token.word) || plainWords.has(token.word) ? 'plain' : 'lost',
  );
  items.forEach((item, index) => {
    const role = used.has(index) ? 'taken' : roleOf(item);
    const factless = role === 'lost' && tokens.slice(item.from, item.to).every(({ word }) => plainWords.has(word));
    if (role === undefined || factless) return;
    for (let at = item.from; at < item.to; at += 1) if (!hesitations.has(tokens[at]!.word)) roles[at] = role;
  });
  for (const { from, to } of takenRanges)
    for (let at = from; at < to; at += 1) if (tokens[at]!.kind !== 'break') roles[at] = 'taken';
  return roles;
}

/** Names of subjects and words of correction that led to nothing carry no fact; anything else that no field took is lost. */
function roleOf(item: Item): TokenRole | undefined {
  if (item.amount !== undefined || item.guessed === true) return 'lost';
  if (
    item.meanings.some(({ kind }) => kind === 'subject') ||
    item.meanings.every(({ kind }) => kind === 'plain' || kind === 'cue')
  )
    return 'plain';
  if (item.meanings.some((meaning) => meaning.kind === 'side' && meaning.role === 'trap')) return 'lost';
  return item.meanings.every(({ kind }) => kind === 'denial') ? undefined : 'lost';
}

/** Stretches of lost words, each within one part of a sentence and with the plain words between them. */
export function stretches(tokens: readonly Token[], roles: readonly TokenRole[]): readonly Stretch[] {
  return clauses(tokens).flatMap(({ from, to }) => clauseStretches(tokens, roles, from, to));
}

function clauseStretches(
  tokens: readonly Token[],
  roles: readonly TokenRole[],
  from: number,
  to: number,
): readonly Stretch[] {
  const lost = Array.from({ length: to - from }, (_, ahead) => from + ahead).filter((at) => roles[at] === 'lost');
  if (lost.length === 0) return [];
  if (!roles.slice(from, to).includes('taken')) return [stretch(tokens, from, to - 1)];
  const out: Stretch[] = [];
  let first = lost[0]!;
  let last = first;
  for (const at of lost.slice(1)) {
    if (roles.slice(last, at).includes('taken')) {
      out.push(stretch(tokens, first, last));
      first = at;
    }
    last = at;
  }
  return [...out, stretch(tokens, first, last)];
}

function stretch(tokens: readonly Token[], first: number, last: number): Stretch {
  return { start: tokens[first]!.start, end: tokens[last]!.end };
}

function clauses(tokens: readonly Token[]): readonly { readonly from: number; readonly to: number }[] {
  const out: { from: number; to: number }[] = [];
  let from = 0;
  tokens.forEach((token, at) => {
    if (token.kind !== 'break') return;
    if (at > from) out.push({ from, to: at });
    from = at + 1;
  });
  if (from < tokens.length) out.push({ from, to: tokens.length });
  return out;
}

const reach = 3;

/** Whether a lost word stands within three words of a range, in the same part of a sentence. */
export function lostBeside(tokens: readonly Token[], roles: readonly TokenRole[], from: number, to: number): boolean {
  return looks(from - 1, -1) || looks(to, 1);

  function looks(start: number, step: 1 | -1): boolean {
    for (let at = start, seen = 0; seen < reach && at >= 0 && at < tokens.length; at += step) {
      if (tokens[at]!.kind === 'break') return false;
      if (roles[at] === 'lost') return true;
      if (roles[at] === 'taken') return false;
      seen += 1;
    }
    return false;
  }
}
