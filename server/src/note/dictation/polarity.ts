import type { SpokenField, SpokenValue } from '@sideport/schemas/spoken/phrase.ts';
import { gapBetween, neighbour } from './gaps.ts';
import type { Item } from './scan.ts';
import type { Token } from './tokens.ts';

/** Whether a fact is stated, denied, or left open; `from` and `to` take in the words that say so. */
export interface Polarity {
  readonly sense: 'stated' | 'denied' | 'open';
  readonly from: number;
  readonly to: number;
  /** Islands whose words were used. */
  readonly by: readonly number[];
}

/** Words that may stand between a denial and what it denies. */
const lightWords = new Set([
  'any',
  'a',
  'an',
  'the',
  'of',
  'for',
  'further',
  'some',
  'it',
  'was',
  'were',
  'is',
  'are',
  'there',
  'in',
  'or',
  'nor',
  'and',
  'to',
  'be',
  'been',
  'at',
  'all',
]);

/** The polarity of every island that a denial or a doubt can touch, by its position. */
export function polarities(items: readonly Item[], tokens: readonly Token[]): ReadonlyMap<number, Polarity> {
  const out = new Map<number, Polarity>();
  items.forEach((item, index) => {
    if (values(item).length > 0) out.set(index, polarityOf(items, tokens, index));
  });
  return out;
}

interface Said {
  readonly field: SpokenField;
  readonly value: SpokenValue;
}

function values(item: Item): readonly Said[] {
  return item.meanings.flatMap((meaning) =>
    meaning.kind === 'value' ? [{ field: meaning.field, value: meaning.value }] : [],
  );
}

/** Whether a denial of the island says something that can be noted. */
export function deniable(item: Item): boolean {
  return values(item).some(
    ({ field, value }) => value.denied !== undefined || value.deniedAs !== undefined || field.deniedIn !== undefined,
  );
}

function polarityOf(items: readonly Item[], tokens: readonly Token[], index: number): Polarity {
  const item = items[index]!;
  const stated: Polarity = { sense: 'stated', from: item.from, to: item.to, by: [] };
  if (values(item).every(({ value }) => value.denies === true)) return stated;
  const before = deniedBefore(items, tokens, index);
  if (before !== undefined) return before;
  const after = answeredNo(items, tokens, index) ?? deniedAfter(items, tokens, index);
  if (after !== undefined) return after;
  return isComplication(item) && hasLooseDenial(items, tokens, index) ? { ...stated, sense: 'open' } : stated;
}

const answers = new Set(['no', 'none', 'nil', 'not', 'never']);
/** Words before an answer that only colour it: “Tension ring, again no.” */
const colours = new Set([
  'again',
  'thankfully',
  'luckily',
  'fortunately',
  'happily',
  'mercifully',
  'certainly',
  'definitely',
  'also',
]);
const undone = new Set(['done', 'needed', 'required', 'used', 'necessary', 'seen']);

/** "Hydrodissection: no", "Vitrectomy? Not needed", "prolapse, no" and "hydrodissection was not". */
function answeredNo(items: readonly Item[], tokens: readonly Token[], index: number): Polarity | undefined {
  const item = items[index]!;
  const pause = tokens[item.to];
  const answer = colours.has(tokens[item.to + 1]?.word ?? '') ? item.to + 2 : item.to + 1;
  // “Delineation no.”
  if (pause?.word === 'no' && tokens[answer]?.strength === 'sentence' && deniable(item))
    return { sense: 'denied', from: item.from, to: answer, by: byAt(items, index, item.to) };
  const isAnswer = pause?.kind === 'break' && answers.has(tokens[answer]?.word ?? '');
  // “Hydrodelineation was not.”
  const isShort = ['was', 'were', 'is'].includes(tokens[item.to]?.word ?? '') && tokens[answer]?.word === 'not';
  if (!isAnswer && !isShort) return undefined;
  const end = undone.has(tokens[answer + 1]?.word ?? '') ? answer + 2 : answer + 1;
  const after = tokens[end];
  if (after !== undefined && after.kind !== 'break') return undefined;
  // After a comma the word may begin a correction, unless the sentence ends with it.
  if (isAnswer && pause.asks !== true && (pause.strength !== 'part' || after?.strength === 'part')) return undefined;
  return { sense: 'denied', from: item.from, to: end, by: byAt(items, index, answer) };
}

/** The island behind another, when it begins at a token. */
function byAt(items: readonly Item[], index: number, token: number): readonly number[] {
  const by = neighbour(items, index, 1);
  return by === undefined || items[by]!.from !== token ? [] : [by];
}

/** Whether a word of denial stands in the same part of the sentence and denies nothing else: then it may deny this. */
function hasLooseDenial(items: readonly Item[], tokens: readonly Token[], index: number): boolean {
  const start = tokens.findLastIndex(({ kind }, at) => kind === 'break' && at < items[index]!.from) + 1;
  const found = tokens.findIndex(({ kind }, at) => kind === 'break' && at >= items[index]!.to);
  const end = found < 0 ? tokens.length : found;
  return items.some((other, at) => {
    if (at === index || other.from < start || other.to > end || !isDenialAlone(other)) return false;
    const next = neighbour(items, at, 1);
    return next === index || next === undefined || !deniable(items[next]!) || items[next]!.from >= end;
  });
}

/** A word that denies, or corrects, and names nothing. */
function isDenialAlone({ meanings }: Item): boolean {
  return (
    meanings.some(({ kind }) => kind === 'denial') && meanings.every(({ kind }) => kind === 'denial' || kind === 'cue')
  );
}

function deniedBefore(items: readonly Item[], tokens: readonly Token[], index: number): Polarity | undefined {
  const item = items[index]!;
  let right = index;
  let joined: 'none' | 'comma' | 'and' | 'or' = 'none';
  for (;;) {
    const left = neighbour(items, right, -1);
    if (left === undefined) return undefined;
    const gap = gapBetween(tokens, items[left]!.to, items[right]!.from);
    if (gap.content > 0 || gap.sentences > 0 || gap.plain.some((word) => !lightWords.has(word))) return undefined;
    joined = stronger(
      joined,
      right === index && isDenial(items[left]!, 'before') ? 'none' : joinedBy(gap, isDenial(items[left]!, 'before')),
    );
    const direct = right === index;
    if (isDoubt(items[left]!, 'before')) {
      if (gap.parts > 0 || (!direct && joined !== 'and' && joined !== 'or')) return undefined;
      return { sense: 'open', from: direct ? items[left]!.from : item.from, to: item.to, by: [left] };
    }
    if (isDenial(items[left]!, 'before')) {
      if (gap.parts > 0) return undefined;
      if (direct) return { sense: 'denied', from: items[left]!.from, to: item.to, by: [left] };
      return inList(items, tokens, index, left, joined);
    }
    if (!deniable(items[left]!) || !deniable(item)) return undefined;
    right = left;
  }
}

/** A member of a list that begins with a denial: "no A, B or C" denies all, "no A and B" is not clear. */
function inList(
  items: readonly Item[],
  tokens: readonly Token[],
  index: number,
  denial: number,
  joined: 'none' | 'comma' | 'and' | 'or',
): Polarity | undefined {
  const item = items[index]!;
  const whole = stronger(joined, joinedLater(items, tokens, index));
  if (whole === 'or') return { sense: 'denied', from: item.from, to: item.to, by: [denial] };
  if (whole !== 'and' && (positive(items, tokens, index) || !isComplication(item))) return undefined;
  return { sense: 'open', from: item.from, to: item.to, by: [] };
}

function joinedLater(items: readonly Item[], tokens: readonly Token[], index: number): 'none' | 'comma' | 'and' | 'or' {
  let joined: 'none' | 'comma' | 'and' | 'or' = 'none';
  for (let left = index; ;) {
    const right = neighbour(items, left, 1);
    if (right === undefined || !deniable(items[right]!)) return joined;
    const gap = gapBetween(tokens, items[left]!.to, items[right]!.from);
    if (gap.content > 0 || gap.sentences > 0) return joined;
    joined = stronger(joined, joinedBy(gap, false));
    left = right;
  }
}

function isComplication(item: Item): boolean {
  return values(item).some(({ field }) => field.deniedIn !== undefined);
}

/** Words that say that something was done. */
const doneWords = new Set([
  'performed',
  'used',
  'done',
  'given',
  'inserted',
  'placed',
  'made',
  'carried',
  'noted',
  'seen',
  'occurred',
  'implanted',
  'applied',
]);

function positive(items: readonly Item[], tokens: readonly Token[], index: number): boolean {
  return [0, 1, 2].some((ahead) => doneWords.has(tokens[items[index]!.to + ahead]?.word ?? ''));
}

type Joined = 'none' | 'comma' | 'and' | 'or';
const strength: readonly Joined[] = ['none', 'comma', 'and', 'or'];

function stronger(a: Joined, b: Joined): Joined {
  return strength.indexOf(a) >= strength.indexOf(b) ? a : b;
}

function joinedBy(gap: { readonly plain: readonly string[]; readonly parts: number }, afterDenial: boolean): Joined {
  if (gap.plain.includes('or') || gap.plain.includes('nor')) return 'or';
  if (gap.plain.includes('and')) return 'and';
  return gap.parts > 0 && !afterDenial ? 'comma' : 'none';
}

function deniedAfter(items: readonly Item[], tokens: readonly Token[], index: number): Polarity | undefined {
  const item = items[index]!;
  for (let left = index; ;) {
    const right = neighbour(items, left, 1);
    if (right === undefined) return undefined;
    const gap = gapBetween(tokens, items[left]!.to, items[right]!.from);
    const direct = left === index;
    if (gap.content > 0 || gap.sentences > 0 || gap.plain.some((word) => !lightWords.has(word))) return undefined;
    if (direct && isDoubt(items[right]!, 'after'))
      return { sense: 'open', from: item.from, to: items[right]!.to, by: [right] };
    if (isDenial(items[right]!, 'after')) {
      if (isDenial(items[right]!, 'before') && startsAnother(items, tokens, right)) return undefined;
      return { sense: 'denied', from: item.from, to: direct ? items[right]!.to : item.to, by: [right] };
    }
    if (!deniable(items[right]!) || !deniable(item) || !(gap.plain.includes('and') || gap.plain.includes('or')))
      return undefined;
    left = right;
  }
}

/** Whether a word such as "none" or "not" denies what follows it rather than what stands before. */
function startsAnother(items: readonly Item[], tokens: readonly Token[], denial: number): boolean {
  const next = neighbour(items, denial, 1);
  if (next === undefined || !deniable(items[next]!)) return false;
  const gap = gapBetween(tokens, items[denial]!.to, items[next]!.from);
  return gap.content === 0 && gap.parts === 0 && gap.sentences === 0;
}

function isDenial(item: Item, stands: 'before' | 'after'): boolean {
  return item.meanings.some((meaning) => meaning.kind === 'denial' && meaning.stands === stands);
}

function isDoubt(item: Item, stands: 'before' | 'after'): boolean {
  return item.meanings.some((meaning) => meaning.kind === 'doubt' && meaning.stands === stands);
}
