import { operatedAdjectives, operatedThings, sideLetters } from '@sideport/schemas/spoken/sides.ts';
import { gapBetween } from './gaps.ts';
import type { Item } from './scan.ts';
import type { Token } from './tokens.ts';

/** One place where a side is spoken of. */
export interface SideMention {
  readonly side: 'right' | 'left' | undefined;
  /**
   * asserted: names the operated eye. alone: the side word stands by itself. trap: means something else.
   * heard: only sounds like a side.
   */
  readonly role: 'asserted' | 'alone' | 'trap' | 'heard';
  readonly item: number;
  readonly start: number;
  readonly end: number;
  readonly superseded: boolean;
}

/** Every mention of a side, in order. `text` is the dictation: abbreviations count only in capitals. */
export function sideMentions(items: readonly Item[], tokens: readonly Token[], text: string): readonly SideMention[] {
  const mentions: SideMention[] = [];
  items.forEach((item, index) => {
    for (const meaning of item.meanings) {
      if (meaning.kind !== 'side') continue;
      const role = meaning.role === 'bare' ? bareRole(tokens, item) : meaning.role;
      mentions.push({ side: meaning.side, role, item: index, start: item.start, end: item.end, superseded: false });
    }
  });
  return superseding(
    [...mentions, ...lettered(items, tokens, text)].toSorted((a, b) => a.start - b.start),
    items,
    tokens,
  );
}

function bareRole(tokens: readonly Token[], item: Item): SideMention['role'] {
  let at = item.to;
  while (
    at < item.to + 4 &&
    operatedAdjectives.has(tokens[at]?.word ?? '') &&
    !operatedThings.has(tokens[at]?.word ?? '')
  )
    at += 1;
  return operatedThings.has(tokens[at]?.word ?? '') ? 'asserted' : 'alone';
}

/** "OD", "LE": capitals that no island covers. */
function lettered(items: readonly Item[], tokens: readonly Token[], text: string): readonly SideMention[] {
  return tokens.flatMap((token, at): readonly SideMention[] => {
    if (token.end - token.start !== 2) return none;
    const side = sideLetters[text.slice(token.start, token.end)];
    if (side === undefined || items.some(({ from, to }) => from <= at && at < to)) return none;
    return [{ side, role: 'asserted', item: -1, start: token.start, end: token.end, superseded: false }];
  });
}

const none: readonly SideMention[] = [];

/** A side followed by a word of correction and another side is withdrawn. */
function superseding(
  mentions: readonly SideMention[],
  items: readonly Item[],
  tokens: readonly Token[],
): readonly SideMention[] {
  return mentions.map((mention, at) => {
    const next = mentions[at + 1];
    if (
      next === undefined ||
      mention.item < 0 ||
      next.item < 0 ||
      next.side === mention.side ||
      next.role === 'trap' ||
      mention.role === 'trap'
    )
      return mention;
    return { ...mention, superseded: correctedBetween(items, tokens, mention.item, next.item) };
  });
}

function correctedBetween(items: readonly Item[], tokens: readonly Token[], from: number, to: number): boolean {
  let cue = false;
  for (let at = from + 1; at <= to; at += 1) {
    const gap = gapBetween(tokens, items[at - 1]!.to, items[at]!.from);
    if (gap.content > 0 || gap.sentences > 1) return false;
    if (at < to && !items[at]!.meanings.some(({ kind }) => kind === 'cue' || kind === 'plain')) return false;
    if (at < to && items[at]!.meanings.some(({ kind }) => kind === 'cue')) cue = true;
  }
  return cue;
}

/** What the mentions together say. */
export interface SideVerdict {
  readonly side: 'right' | 'left' | undefined;
  /** The mention the side is read from. */
  readonly from: SideMention | undefined;
  /** Why the side needs a look, or undefined when every mention agrees. */
  readonly doubt: string | undefined;
  /** The mentions that contradict each other. */
  readonly contradicting: readonly SideMention[];
}

/** The operated side, or the contradiction. A side that was said is never enough by itself: the result is proposed at most. */
export function judgeSides(mentions: readonly SideMention[], tokens: readonly Token[]): SideVerdict {
  const live = mentions.filter(({ superseded }) => !superseded);
  const asserted = live.filter(({ role }) => role === 'asserted');
  const said =
    asserted.length > 0 ? asserted : live.filter((mention) => mention.role === 'alone' && standsAlone(mention, tokens));
  const here = said.filter((mention) => !isOfOtherEye(mention, tokens));
  const sides = new Set((here.length > 0 ? here : said).map(({ side }) => side));
  if (sides.size > 1) {
    return {
      side: undefined,
      from: said[0],
      doubt: 'both sides are spoken of as the operated eye',
      contradicting: said,
    };
  }
  const from = here.find(({ item }) => item >= 0) ?? here[0] ?? said[0];
  const heard = live.filter(({ role }) => role === 'heard');
  if (from?.side === undefined) {
    const unclear = live.filter(({ role }) => role === 'alone' || role === 'heard');
    return {
      side: undefined,
      from: unclear[0],
      doubt: unclear.length > 0 ? 'the side is not clear' : undefined,
      contradicting: [],
    };
  }
  const others = live.filter(
    ({ side, role }) => side !== undefined && side !== from.side && (role === 'alone' || role === 'asserted'),
  );
  const withdrawn = mentions.filter(({ superseded }) => superseded);
  const doubt =
    others.length > 0
      ? `“${others[0]!.side}” is also said`
      : withdrawn.length > 0
        ? 'the side was corrected while dictating'
        : heard.length > 0
          ? 'another word sounds like a side'
          : undefined;
  return { side: from.side, from, doubt, contradicting: [] };
}

/** Words beside a side that tell of an eye operated at another time, or not at all. */
const atOtherTime = new Set('ago last previously amblyopic own later will shall next years months back'.split(' '));
const NEAR = 8;

/** Whether a side is spoken of as that of the other eye: “the right eye was done last year”. */
function isOfOtherEye(mention: SideMention, tokens: readonly Token[]): boolean {
  const at = tokens.findIndex(({ start }) => start >= mention.start);
  const around = [...reach(tokens, at, -1), ...reach(tokens, at, 1)];
  return around.some(({ word }) => atOtherTime.has(word));
}

function reach(tokens: readonly Token[], at: number, step: 1 | -1): readonly Token[] {
  const found: Token[] = [];
  for (let next = at + step; Math.abs(next - at) <= NEAR; next += step) {
    const token = tokens[next];
    if (token === undefined || token.strength === 'sentence') break;
    found.push(token);
  }
  return found;
}

/** A side word between two breaks, or at the very beginning before one. */
function standsAlone(mention: SideMention, tokens: readonly Token[]): boolean {
  const at = tokens.findIndex(({ start }) => start === mention.start);
  const before = tokens[at - 1];
  const after = tokens[at + 1];
  return (before === undefined || before.kind === 'break') && (after === undefined || after.strength === 'sentence');
}
