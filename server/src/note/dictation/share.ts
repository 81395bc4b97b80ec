import type { Claim } from './claims.ts';
import { gapBetween } from './gaps.ts';
import type { Token } from './tokens.ts';

const joining = new Set(['and', 'plus', 'with', '/']);

/**
 * "Dexamethasone and ofloxacin four times a day": what is said of the last of several drops holds for those joined
 * to it that have nothing of their own. Returns the claims with the shared ones added, as implied.
 */
export function withShared(claims: readonly Claim[], tokens: readonly Token[]): readonly Claim[] {
  const added: Claim[] = [];
  const live = claims.filter(({ superseded }) => !superseded);
  const names = live.filter(({ field }) => field.opens !== undefined && field.path.startsWith('after-care.drops['));
  names.forEach((name, at) => {
    const next = names[at + 1];
    if (next === undefined || !joined(tokens, name.to, next.from)) return;
    const own = regimens([...live, ...added], name);
    if (own.length > 0) return;
    for (const claim of regimens(live, next))
      added.push({ ...claim, field: fieldOf(claim, name), path: pathOf(claim, name), implied: true });
  });
  return toAll([...claims, ...added]);
}

/** What is said of the drops as such holds for each that has nothing of its own; without any it stays as it is. */
function toAll(claims: readonly Claim[]): readonly Claim[] {
  const live = claims.filter(({ superseded }) => !superseded);
  const names = live.filter(({ field }) => field.opens !== undefined && field.path.startsWith('after-care.drops['));
  const shared = live.filter(({ path }) => path === 'after-care.drops[drops].regimen');
  const given = shared.flatMap((claim) =>
    names
      .filter((name) => regimens(live, name).every(({ part }) => part !== claim.part))
      .map((name) => ({ ...claim, field: fieldOf(claim, name), path: pathOf(claim, name), implied: true })),
  );
  if (given.length === 0) return claims;
  const parts = new Set(given.map(({ part }) => part));
  return [...claims.filter((claim) => !shared.includes(claim) || !parts.has(claim.part)), ...given];
}

function joined(tokens: readonly Token[], from: number, to: number): boolean {
  const gap = gapBetween(tokens, from, to);
  return (
    gap.content === 0 &&
    gap.sentences === 0 &&
    gap.plain.every((word) => joining.has(word)) &&
    (gap.plain.length > 0 || gap.parts > 0)
  );
}

function entryOf(path: string): string {
  return path.slice(0, path.indexOf(']') + 1);
}

function regimens(claims: readonly Claim[], name: Claim): readonly Claim[] {
  return claims.filter(({ path }) => path === `${entryOf(name.path)}.regimen`);
}

function pathOf(claim: Claim, name: Claim): string {
  return `${entryOf(name.path)}${claim.path.slice(claim.path.indexOf(']') + 1)}`;
}

function fieldOf(claim: Claim, name: Claim): Claim['field'] {
  return { ...claim.field, path: pathOf(claim, name) };
}
