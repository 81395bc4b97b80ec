import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import { accepts } from './claims.ts';
import type { Context } from './context.ts';
import { chooseBound, valuedOf } from './rank-words.ts';
import type { Item } from './scan.ts';
import type { Amount } from './spoken-amounts.ts';
import type { AmountOf } from './table.ts';

/** A field that could take a number, with how well it fits. */
export interface RankedField {
  readonly of: AmountOf;
  readonly score: number;
  /** Decided by a name that was only understood by its sound. */
  readonly heard: boolean;
}

interface Spoken {
  readonly item: Item;
  readonly amount: Amount;
  readonly index: number;
  /** The island whose surroundings before it count. */
  readonly place: number;
  readonly afterAt: boolean;
  readonly ahead: Ahead | undefined;
}

interface Score {
  readonly score: number;
  readonly heard: boolean;
}

const nothing: Score = { score: 0, heard: false };

/** Every field that could take a number, best first. `place` is the island whose surroundings count: the number that this one replaces. */
export function rankAmounts(
  context: Context,
  amount: Amount,
  index: number,
  place: number = index,
): readonly RankedField[] {
  const item = context.items[place]!;
  const spoken: Spoken = {
    item,
    amount,
    index,
    place,
    afterAt: followsAt(context, item),
    ahead: aheadOf(context, index),
  };
  return (context.table.amountsIn.get(amount.unit ?? '') ?? [])
    .map((of) => ({ of, ...scoreOf(context, of, spoken) }))
    .filter(({ score }) => score > 0)
    .toSorted((a, b) => b.score - a.score);
}

/** Scores up to here are guesses: nothing spoken about asked for the number. */
export const guessed = 1.5;

function scoreOf(context: Context, of: AmountOf, spoken: Spoken): Score {
  const scores = [
    openScore(context, of, spoken),
    topicScore(context, of, spoken),
    forwardScore(of, spoken),
    defaultScore(context, of, spoken),
  ];
  const best = scores.reduce((a, b) => (b.score > a.score ? b : a));
  return best.score <= 0 ? nothing : { ...best, score: best.score + likelihood(of, spoken.amount) };
}

/** Usual sizes are likelier meant than others. */
function likelihood(of: AmountOf, { value, unit }: Amount): number {
  const { usual, also } = of.amount;
  if (usual === undefined) return 0;
  const scaled = value * (unit === undefined || unit === of.amount.unit ? 1 : (also?.[unit] ?? 1));
  return scaled >= usual[0] && scaled <= usual[1] ? 0.5 : -1;
}

/** "Vacuum four fifty": the field's own name was said before. */
function openScore(context: Context, of: AmountOf, { item, amount, place, afterAt }: Spoken): Score {
  const { open } = context;
  if (open === undefined || !open.fields.includes(of.field) || !accepts(of.amount, amount, { named: true, afterAt }))
    return nothing;
  const gap = context.gap(open.index, place);
  const between = context.between(open.index, place);
  const apart = gap.content > 0 || between > 0 || (amount.unit === undefined && gap.plain.length > 0);
  if (gap.sentences > 0 && apart) return nothing;
  const heard = context.items[open.index]!.heard;
  const led = leads.has(context.wordBefore(item)) ? 0.2 : 0;
  return { score: 8 - 2 * gap.sentences - 1.5 * gap.content - 0.5 * between + led, heard };
}

/** "Rhexis five millimetres": the subject is being spoken about. */
function topicScore(context: Context, of: AmountOf, { item, amount, index, afterAt }: Spoken): Score {
  if (!context.isAbout(of.field) || !accepts(of.amount, amount, { named: false, afterAt })) return nothing;
  const led = leads.has(context.wordBefore(item)) ? 1.5 : 0;
  const lone = amount.unit !== undefined && !amount.adjective ? 0.3 : 0;
  const score = 4 - context.sentencesSinceTopic(index) + led + lone - context.filled(of.field, partOf(of));
  return { score, heard: context.items[context.topicAt]!.heard };
}

/** The name that comes after a number, with what can be said of it whatever the field. */
interface Ahead {
  readonly subjects: readonly string[];
  readonly named: readonly SpokenField[];
  /** A number of its own stands behind it, or another part of the sentence. */
  readonly taken: boolean;
  readonly adjacent: boolean;
  readonly distance: number;
  readonly heard: boolean;
}

function aheadOf(context: Context, index: number): Ahead | undefined {
  const anchor = context.anchorAfter(index);
  if (anchor === undefined) return undefined;
  const gap = context.gap(index, anchor);
  if (gap.sentences > 0 || gap.content > 1) return undefined;
  const { meanings, heard } = context.items[anchor]!;
  return {
    subjects: subjectsAhead(context, anchor),
    named: meanings.flatMap((meaning) =>
      meaning.kind === 'called' && context.canBeNamed(meaning, anchor) ? [meaning.field] : [],
    ),
    taken: gap.parts > 0 || hasOwnNumber(context, anchor),
    adjacent: anchor === index + 1 && gap.content === 0 && gap.plain.length === 0 && gap.parts === 0,
    distance: 1.5 * gap.content + 0.8 * gap.parts,
    heard,
  };
}

/** "Five millimetre rhexis", "four hundred vacuum": the name comes after. */
function forwardScore(of: AmountOf, { ahead, amount, afterAt }: Spoken): Score {
  if (ahead === undefined) return nothing;
  const called = ahead.named.includes(of.field);
  if (!called && !of.field.about.some((subject) => ahead.subjects.includes(subject))) return nothing;
  if (!accepts(of.amount, amount, { named: called, afterAt }) || (called && ahead.taken)) return nothing;
  const closeness = (amount.adjective ? 1.8 : 0) + (ahead.adjacent && amount.unit === undefined ? 0.5 : 0);
  return { score: (called ? 4 : 3.5) + closeness - ahead.distance, heard: ahead.heard };
}

/** The subjects that an island will open: of a drug, those of the route that it will be taken for. */
function subjectsAhead(context: Context, anchor: number): readonly string[] {
  const item = context.items[anchor]!;
  const drugs = item.meanings.flatMap(valuedOf).filter(({ field }) => field.opens !== undefined);
  if (drugs.length === 0) return context.subjectsOf(anchor);
  const chosen = chooseBound(context, item, drugs, anchor)?.one.field.opens;
  return chosen === undefined ? [] : [chosen];
}

/** Whether a field's name is followed by a number of its own: "four fifty, vacuum three hundred". */
function hasOwnNumber(context: Context, anchor: number): boolean {
  const next = context.next(anchor);
  if (next === undefined || context.items[next]!.amount === undefined) return false;
  const gap = context.gap(anchor, next);
  return gap.sentences === 0 && gap.content === 0 && gap.parts === 0 && context.anchorAfter(next) !== next + 1;
}

/** A power or a width that nothing asked for, but that only one field can mean. */
function defaultScore(context: Context, of: AmountOf, { amount, index, afterAt }: Spoken): Score {
  const meant =
    of.amount.byDefault === 'signed'
      ? isPower(of, amount)
      : of.amount.byDefault === 'before a position' && isBeforePosition(context, of, amount, index);
  return meant && accepts(of.amount, amount, { named: true, afterAt }) ? { score: 1, heard: false } : nothing;
}

function isPower(of: AmountOf, amount: Amount): boolean {
  return amount.unit === of.amount.unit || (amount.signed && amount.unit === undefined);
}

/** "Two point two at forty five degrees". */
function isBeforePosition(context: Context, of: AmountOf, amount: Amount, index: number): boolean {
  if (amount.unit !== undefined && amount.unit !== of.amount.unit) return false;
  const next = context.items[index + 1];
  if (
    next?.amount === undefined ||
    context.sentence(index) !== context.sentence(index + 1) ||
    !followsAt(context, next)
  )
    return false;
  return next.amount.unit === '°' || (next.amount.unit === undefined && next.amount.value > 12);
}

/** Words that lead from a subject to its measure. */
const leads = new Set(['at', 'of', 'is', 'was', 'measuring', 'measured', 'on', 'were', 'to']);
const between = new Set(['the', 'about', 'around', 'um', 'uh', 'er', 'erm', ',', 'approximately', 'axis']);

function followsAt(context: Context, item: Item): boolean {
  let back = 1;
  while (back < 3 && between.has(context.wordBefore(item, back))) back += 1;
  return ['at', 'on'].includes(context.wordBefore(item, back));
}

/** Numbers of different units in one field are parts of one value: milligrams in millilitres, degrees and clock hours. */
export function partOf({ field, amount }: AmountOf): string {
  return (field.amounts?.length ?? 0) > 1 ? amount.unit : '';
}
