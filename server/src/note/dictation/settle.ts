import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import type { Claim } from './claims.ts';

/** A claim that stands, with whether it may be taken as it is. */
export interface Settled {
  readonly claim: Claim;
  readonly state: 'filled' | 'proposed' | 'unresolved';
  readonly because: string;
}

/** Values of one field that contradict each other. */
export interface Contradiction {
  readonly field: SpokenField;
  readonly claims: readonly Claim[];
  readonly because: string;
}

export interface Settlement {
  readonly settled: readonly Settled[];
  readonly contradictions: readonly Contradiction[];
}

/** Values that say the same more exactly: [wider, closer]. */
const closer: readonly (readonly [string, string])[] = [
  ['phacoemulsification', 'phacoemulsification with lens'],
  ['toric', 'toric multifocal'],
  ['multifocal', 'toric multifocal'],
  ['complete', 'rescued'],
];

/** Decides, field by field, what may be taken as said, what asks for a look, and what is contradictory. */
export function settle(claims: readonly Claim[], nearUnexplained: (claim: Claim) => boolean): Settlement {
  const live = withoutDeniedParts(withoutDeniedAids(secondThoughts(claims.filter((claim) => !claim.superseded))));
  const settled: Settled[] = [];
  const contradictions: Contradiction[] = [];
  for (const group of groups(live)) {
    const kept = withoutWeaker(group);
    const distinct = new Set(kept.filter(({ open }) => !open).map(keyOf));
    const [first] = kept;
    if (first === undefined) continue;
    if (distinct.size > 1 && !severalAllowed(kept)) {
      contradictions.push({ field: first.field, claims: kept, because: contradictionText(kept) });
      continue;
    }
    const seen = new Set<string>();
    for (const claim of kept) {
      if (seen.has(keyOf(claim)) && !claim.open) continue;
      seen.add(keyOf(claim));
      settled.push({ claim, ...stateOf(claim, nearUnexplained) });
    }
  }
  return noneAgainstSome(withDoubtfulParts(withoutOrphans(settled, claims), contradictions), contradictions);
}

/**
 * What goes beside a claim stands and falls with it. A claim that another of its field replaced has not fallen: “grade
 * two, no, grade three” leaves the cataract nuclear.
 */
function withoutOrphans(settled: readonly Settled[], claims: readonly Claim[]): readonly Settled[] {
  const standing = settled.filter(({ claim }) => !claim.besides);
  return settled.filter(({ claim }) => {
    if (!claim.besides) return true;
    const beside = claims.find((one) => !one.besides && one.from === claim.from && one.to === claim.to);
    return standing.some(({ claim: one }) => one.field === beside?.field && one.denied === beside.denied);
  });
}

/** One aid denied says nothing where another was used. */
function withoutDeniedAids(claims: readonly Claim[]): readonly Claim[] {
  const aids = claims.filter(({ field, open }) => field.path.startsWith('pupil-aid[') && !open);
  if (!aids.some(({ value }) => value !== 'none')) return claims;
  return claims.filter((claim) => !(aids.includes(claim) && claim.denied));
}

/** What was not done at all has no parts that were not done either: “no vitrectomy, no triamcinolone”. */
function withoutDeniedParts(claims: readonly Claim[]): readonly Claim[] {
  const undone = claims.filter(({ denied, open, value }) => denied && !open && value === 'not done');
  return claims.filter((claim) => !(claim.denied && undone.some(({ path }) => claim.path.startsWith(`${path}.`))));
}

/** Where it is not clear whether there was a thing at all, what was said of it is not clear either. */
function withDoubtfulParts(settled: readonly Settled[], contradictions: readonly Contradiction[]): readonly Settled[] {
  const denied = contradictions.flatMap(({ claims }) =>
    claims.filter(({ value }) => value === 'none' || value === 'not done').map(({ path }) => path),
  );
  return settled.map((one) =>
    denied.some((path) => one.claim.path.startsWith(`${path}.`))
      ? { ...one, state: 'unresolved', because: 'it is not clear whether there was any' }
      : one,
  );
}

/** What gives way to another value of its field is kept in words. */
function secondThoughts(claims: readonly Claim[]): readonly Claim[] {
  return claims.map((claim) => {
    const yields =
      claim.orElse !== undefined && claims.some((other) => other.field === claim.field && other.orElse === undefined);
    if (!yields) return claim;
    const path = 'free-text[besides]';
    return { ...claim, field: { path, about: [] }, path, value: claim.orElse };
  });
}

function severalAllowed(group: readonly Claim[]): boolean {
  return group[0]!.field.several === true;
}

function keyOf(claim: Claim): string {
  return `${claim.denied ? 'not ' : ''}${claim.field.deniedIn === undefined ? claim.value : ''}`;
}

function groups(claims: readonly Claim[]): readonly (readonly Claim[])[] {
  const byKey = new Map<string, Claim[]>();
  for (const claim of claims) {
    const key = `${claim.field.path} ${claim.field.several === true ? '' : claim.part}`;
    const group = byKey.get(key) ?? [];
    group.push(claim);
    byKey.set(key, group);
  }
  return [...byKey.values()];
}

/** Implied and misheard values yield to one that was said; a wider term yields to a closer one. */
function withoutWeaker(group: readonly Claim[]): readonly Claim[] {
  const known = group.some(({ guessed }) => !guessed) ? group.filter(({ guessed }) => !guessed) : group;
  const values = new Set(known.filter(({ open }) => !open).map(({ value }) => value));
  const precise = known.filter(({ value }) => !closer.some(([wide, close]) => wide === value && values.has(close)));
  if (group[0]?.field.several === true) return precise;
  const said = precise.filter((claim) => !claim.implied && !claim.open && !claim.besides);
  if (said.length === 0) return precise;
  return precise.filter(
    (claim) => said.includes(claim) || (claim.besides && said.some(({ value }) => value === claim.value)),
  );
}

function stateOf(claim: Claim, nearUnexplained: (claim: Claim) => boolean): Omit<Settled, 'claim'> {
  if (claim.open)
    return {
      state: 'unresolved',
      because: claim.denied
        ? 'denied, and the note has no words for that'
        : 'the words around it leave open whether it happened',
    };
  if (claim.heard) {
    if (claim.denied) return { state: 'unresolved', because: 'sounds like a denial; a denial is never guessed' };
    return { state: 'proposed', because: 'understood by its sound only' };
  }
  if (claim.implied) return { state: 'proposed', because: 'follows from what was said' };
  if (claim.unsure) return { state: 'proposed', because: 'could belong to another field as well' };
  if (claim.field.critical === true)
    return { state: 'proposed', because: 'asks for confirmation or a second source, however clearly it was said' };
  if (nearUnexplained(claim)) return { state: 'proposed', because: 'a word beside it is not understood' };
  return { state: 'filled', because: 'said clearly, and every word beside it is understood' };
}

function contradictionText(claims: readonly Claim[]): string {
  const values = [...new Set(claims.map(({ value, denied }) => (denied ? `not ${value}` : value)))];
  return `said as ${values.join(' and as ')}, without a word of correction`;
}

/** "No complications" beside a complication that happened contradicts itself. */
function noneAgainstSome(settled: readonly Settled[], contradictions: readonly Contradiction[]): Settlement {
  const none = settled.filter(({ claim }) => claim.path === 'complications');
  const some = settled.filter(
    ({ claim, state }) => claim.field.deniedIn !== undefined && !claim.denied && state !== 'unresolved',
  );
  if (none.length === 0 || some.length === 0) return { settled, contradictions };
  const [first] = none;
  return {
    settled: settled.filter((one) => !none.includes(one)),
    contradictions: [
      ...contradictions,
      {
        field: first!.claim.field,
        claims: [...none, ...some].map(({ claim }) => claim),
        because: 'no complications, and yet one is described',
      },
    ],
  };
}
