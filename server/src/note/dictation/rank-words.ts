import type { SpokenField, SpokenForm, SpokenValue } from '@sideport/schemas/spoken/phrase.ts';
import { accepts } from './claims.ts';
import type { Context } from './context.ts';
import type { Item } from './scan.ts';
import type { Meaning } from './table.ts';

/** A field with one of its values, or with a phrase whose slot is the value. */
export type Valued =
  | { readonly field: SpokenField; readonly value: SpokenValue }
  | { readonly field: SpokenField; readonly form: SpokenForm };

/** The field that an attribute belongs to. */
export interface ChosenWord {
  readonly one: Valued;
  readonly score: number;
  readonly unsure: boolean;
  /** Decided by a name that was only understood by its sound. */
  readonly heard: boolean;
}

/** The values that a meaning names. */
export function valuedOf(meaning: Meaning): readonly Valued[] {
  if (meaning.kind === 'value') return [{ field: meaning.field, value: meaning.value }];
  return meaning.kind === 'form' ? [{ field: meaning.field, form: meaning.form }] : [];
}

export function isBound(one: Valued): boolean {
  return ('value' in one ? one.value.bound : one.form.bound) === true;
}

export function partOfValue(one: Valued): string {
  return ('value' in one ? one.value.part : one.form.part) ?? '';
}

/** Chooses among fields that an attribute could belong to ("in the bag", "temporal", the name of a drug), or none. */
export function chooseBound(
  context: Context,
  item: Item,
  bound: readonly Valued[],
  index: number,
): ChosenWord | undefined {
  const ranked = bound
    .map((one) => ({ one, ...scoreOf(context, item, one, index) }))
    .filter(({ score }) => score > 0)
    .toSorted((a, b) => b.score - a.score);
  const [best] = ranked;
  if (best === undefined) return undefined;
  const rival = ranked.find(({ one }) => one.field !== best.one.field);
  return { ...best, unsure: best.score < 2 || (rival !== undefined && best.score - rival.score < 0.5) };
}

function scoreOf(
  context: Context,
  item: Item,
  one: Valued,
  index: number,
): { readonly score: number; readonly heard: boolean } {
  const { field } = one;
  let score = 0;
  let heard = false;
  const consider = (other: number, otherHeard: boolean): void => {
    if (other > score) [score, heard] = [other, otherHeard];
  };
  if (context.isAbout(field)) {
    const direct = context.topic !== undefined && field.about.includes(context.topic) ? 0 : -0.2;
    const fading = (field.opens === undefined ? 0.6 : 1.5) * context.sentencesSinceTopic(index);
    consider(
      4 +
        direct +
        room(context, field) +
        wanted(context, field, partOfValue(one)) -
        fading -
        context.filled(field, partOfValue(one)),
      context.items[context.topicAt]!.heard,
    );
  }
  if (context.isOpen(field)) consider(6, context.items[context.open!.index]!.heard);
  const anchor = context.anchorAfter(index);
  if (anchor !== undefined && field.about.some((subject) => context.subjectsOf(anchor).includes(subject))) {
    const gap = context.gapOver(index, anchor);
    const close = isAttributive(context, item) && gap.plain.length === 0 && gap.parts === 0 ? 1.5 : 0;
    if (gap.content <= 1 && gap.sentences === 0)
      consider(3 + close - 0.8 * gap.parts - gap.content, context.items[anchor]!.heard);
  }
  if ('value' in one && one.value.byDefault === true) consider(1, false);
  if (field.opens !== undefined && nextFits(context, index, field.opens)) score += 3;
  if (field.path.startsWith('after-care.drops[') && isTakenLater(context, index)) score += 3;
  return { score, heard };
}

/**
 * "Dexamethasone and chloramphenicol, both four times a day": drugs joined in one sentence that ends in how often they
 * are taken, and that does not begin with how they were given.
 */
function isTakenLater(context: Context, index: number): boolean {
  if (context.sentencesSinceTopic(index) === 0) return false;
  for (let at = index, next = context.next(at); next !== undefined; next = context.next(at)) {
    const gap = context.gap(at, next);
    if (gap.sentences > 0 || gap.content > 0) return false;
    const { meanings } = context.items[next]!;
    if (meanings.some((meaning) => meaning.kind === 'form' && /\{frequency\}/u.test(meaning.form.said.join(' '))))
      return true;
    if (!meanings.some((meaning) => meaning.kind === 'value' && meaning.field.opens !== undefined)) return false;
    at = next;
  }
  return false;
}

/** A place is likelier meant for a subject that has none yet. */
function room(context: Context, field: SpokenField): number {
  if (!field.path.endsWith('.at')) return 0;
  const given = context.claims.some(
    ({ claim, index }) => claim.field === field && !claim.superseded && index >= context.topicAt,
  );
  return given ? -1 : 0.8;
}

/** Drops that were just named are still without what is said of them: "prednisolone four times a day ofloxacin twice". */
function wanted(context: Context, field: SpokenField, part: string): number {
  if (!field.path.endsWith('.regimen') || field.path.startsWith('after-care.drops[drops]')) return 0;
  return context.claims.some(({ claim }) => claim.field === field && claim.part === part) ? 0 : 1;
}

/** Whether the words can stand before the thing they describe, as "temporal" can and "temporally" or "centred" cannot. */
function isAttributive(context: Context, item: Item): boolean {
  const last = context.tokens[item.to - 1]?.word ?? '';
  return !last.endsWith('ly') && !/centred|complete|intact/u.test(last);
}

/** Whether what follows can only be said of a subject. */
function nextFits(context: Context, index: number, subject: string): boolean {
  const next = context.next(index);
  if (next === undefined) return false;
  const item = context.items[next]!;
  const gap = context.gap(index, next);
  if (gap.sentences > 0 || gap.content > 1) return false;
  const { amount } = item;
  if (amount !== undefined) {
    return context.table.amounts.some(
      (of) => of.field.about.includes(subject) && accepts(of.amount, amount, { named: false, afterAt: false }),
    );
  }
  const within = context.withAncestors(subject);
  return item.meanings.some(
    (meaning) =>
      (meaning.kind === 'form' && meaning.form.bound === true && meaning.field.about.includes(subject)) ||
      (meaning.kind === 'subject' && within.includes(meaning.subject.id)),
  );
}
