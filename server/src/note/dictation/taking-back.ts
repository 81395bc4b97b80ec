import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import type { Claim } from './claims.ts';
import type { Context } from './context.ts';
import { entryOf, familyOf, sharesField } from './families.ts';
import { across, withdraw } from './islands.ts';
import type { Meaning } from './table.ts';

/** How far back, in sentences, a thing is remembered that is named to be taken back. */
const RECENT = 3;

/** Words that state what is right: "it was two point four". */
const states = new Set(['is', 'was', 'were', 'be', 'been', 'are']);

/** The thing named behind "forget the", when something was said of it shortly before. */
export function named(
  context: Context,
  index: number,
): { readonly at: number; readonly claims: readonly Claim[]; readonly isField: boolean } | undefined {
  // What was said about a thing may have been said long before.
  const item = context.items[index]!;
  const quotes = context.tokens.slice(item.from, item.to).some(({ word }) => word === 'said');
  const at = context.next(index);
  if (at === undefined || at !== index + 1) return undefined;
  const gap = context.gap(index, at);
  if (gap.content > 0 || gap.parts > 0 || gap.sentences > 0) return undefined;
  const { meanings } = context.items[at]!;
  const fields = meanings.flatMap((meaning) => (meaning.kind === 'called' ? [meaning.field] : []));
  const subjects = meanings.flatMap(thingsOf);
  const live = context.claims.map(({ claim }) => claim).filter(({ superseded }) => !superseded);
  const ofField = live.filter(({ field }) => fields.includes(field));
  if (ofField.length > 0) return { at, claims: ofField, isField: true };
  const recent = (claim: Claim): boolean => quotes || context.sentence(index) - sentenceOf(context, claim) <= RECENT;
  const claims = live.filter(
    (claim) => recent(claim) && claim.field.about.some((subject) => subjects.includes(subject)),
  );
  return claims.length === 0 ? undefined : { at, claims, isField: false };
}

function sentenceOf(context: Context, claim: Claim): number {
  const entry = context.claims.find(({ claim: each }) => each === claim);
  return entry === undefined ? 0 : context.sentence(entry.index);
}

/** What "earlier I said" quotes, and the value behind it that puts it right. */
export function recalled(
  context: Context,
  index: number,
): { readonly quoted: number; readonly right: number } | undefined {
  const first = context.next(index);
  if (first === undefined || context.gap(index, first).content > 0) return undefined;
  const isName = context.items[first]!.meanings.some(({ kind }) => kind === 'subject' || kind === 'called');
  const quoted = isName ? context.next(first) : first;
  if (quoted === undefined || context.gap(first, quoted).content > 0) return undefined;
  const isNumber = context.items[quoted]!.amount !== undefined;
  for (let at = quoted, right = context.next(at); right !== undefined; right = context.next(at)) {
    const gap = context.gap(at, right);
    if (gap.content > 1 || context.sentence(right) - context.sentence(quoted) > 1) return undefined;
    const item = context.items[right]!;
    const isSame = isNumber ? item.amount !== undefined : sharesField(context.items[quoted]!, item);
    if (isSame && gap.plain.some((word) => states.has(word))) return { quoted, right };
    at = right;
  }
  return undefined;
}

/**
 * "Cohesive, not dispersive", "dexamethasone and gentamicin, well, not the gentamicin": a value denied beside another of
 * its kind is withdrawn where it was given before.
 */
export function takesBack(context: Context, field: SpokenField, value: string, index: number): boolean {
  const family = familyOf(field);
  const given = context.claims.filter(
    ({ claim }) => claim.field === field && claim.value === value && !claim.denied && !claim.superseded,
  );
  if (family === undefined || given.length === 0) return false;
  const sentence = context.sentence(index);
  const beside = context.claims.some(
    ({ claim, index: at }) =>
      familyOf(claim.field) === family &&
      claim.field !== field &&
      !claim.superseded &&
      context.sentence(at) === sentence,
  );
  if (!beside) return false;
  for (const { claim } of given) {
    const entry = entryOf(claim.field);
    withdraw(context, ({ claim: other }) => other.path.startsWith(entry));
  }
  return true;
}

/** "Two point six, not two point two": the number behind "not" is withdrawn wherever the field was given it. */
export function denies(context: Context, index: number): boolean {
  const slot = context.items[index]!.slots[0];
  const before = across(context, index, -1);
  if (slot === undefined || before === undefined) return false;
  const right = context.claims.find((entry) => entry.index === before)?.claim;
  if (right === undefined || numberOf(right.value) === Number(slot.text)) return false;
  withdraw(
    context,
    ({ claim }) =>
      claim.field === right.field && claim.part === right.part && numberOf(claim.value) === Number(slot.text),
  );
  return true;
}

/** The number in the text of a value: “+18.5 D”. */
function numberOf(value: string): number {
  return Number(/-?\d+(?:\.\d+)?/u.exec(value)?.[0] ?? NaN);
}

/** The things that a phrase names: its subject, or what its values are about. */
function thingsOf(meaning: Meaning): readonly string[] {
  if (meaning.kind === 'subject') return [meaning.subject.id];
  if (!('field' in meaning) || meaning.kind === 'called') return [];
  return meaning.field.opens === undefined ? meaning.field.about : [meaning.field.opens, ...meaning.field.about];
}
