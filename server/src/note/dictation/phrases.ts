import type { SlotName } from '@sideport/schemas/spoken/phrase.ts';
import { readPattern, type PatternTree } from './pattern.ts';
import { readSlot, type SlotReading } from './slots.ts';
import type { Token } from './tokens.ts';

/** A place in the net of phrases: what may follow the words so far, and what they mean if they end here. */
interface Node<M> {
  words: Map<string, Node<M>[]>;
  slots: [SlotName, Node<M>][];
  ends: M[];
  /** Places that are reached without a word; merged in when the place is first visited. */
  open: Node<M>[];
}

/** Phrases that can be found in a dictation, each with its meaning. */
export class Phrases<M> {
  readonly #root: Node<M> = node<M>();

  /** Enters a pattern with what it means. */
  add(pattern: string, meaning: M): void {
    this.#root.open.push(enter(readPattern(pattern), { ...node<M>(), ends: [meaning] }));
  }

  /** Every phrase that begins at a token, with all its meanings. */
  at(tokens: readonly Token[], from: number): readonly Found<M>[] {
    const found: Found<M>[] = [];
    walk(merged(this.#root), tokens, { from, at: from, slots: [] }, found);
    return found;
  }
}

/** A phrase found in a dictation. `to` is the position after its last token. */
export interface Found<M> {
  readonly from: number;
  readonly to: number;
  readonly meanings: readonly M[];
  readonly slots: readonly SlotReading[];
}

/** Sounds of hesitation: a phrase runs on over them. */
export const hesitations = new Set(['um', 'uh', 'er', 'erm', 'umm', 'uhm', 'hmm', 'ah', 'eh']);

function node<M>(): Node<M> {
  return { words: new Map(), slots: [], ends: [], open: [] };
}

/** The place from which a pattern leads to `target`. */
function enter<M>(tree: PatternTree, target: Node<M>): Node<M> {
  if (tree.kind === 'sequence') return tree.parts.reduceRight((next, part) => enter(part, next), target);
  if (tree.kind === 'either') return { ...node<M>(), open: tree.parts.map((part) => enter(part, target)) };
  if (tree.kind === 'slot') return { ...node<M>(), slots: [[tree.slot, target]] };
  return { ...node<M>(), words: new Map([[tree.word, [target]]]) };
}

/** A place with everything merged in that is reached without a word. */
function merged<M>(place: Node<M>): Node<M> {
  if (place.open.length === 0) return place;
  const waiting = place.open;
  place.open = [];
  for (const other of waiting) {
    const next = merged(other);
    for (const [word, targets] of next.words) place.words.set(word, [...(place.words.get(word) ?? []), ...targets]);
    place.slots.push(...next.slots);
    place.ends.push(...next.ends.filter((end) => !place.ends.includes(end)));
  }
  return place;
}

interface Walk {
  readonly from: number;
  readonly at: number;
  readonly slots: readonly SlotReading[];
}

function walk<M>(place: Node<M>, tokens: readonly Token[], so: Walk, found: Found<M>[]): void {
  if (place.ends.length > 0 && so.at > so.from) record(place, so, found);
  let at = so.at;
  while (at > so.from && hesitations.has(tokens[at]?.word ?? '')) at += 1;
  const token = tokens[at];
  if (token === undefined || token.strength === 'sentence') return;
  for (const next of place.words.get(token.word) ?? []) walk(merged(next), tokens, { ...so, at: at + 1 }, found);
  if (token.kind === 'break') return;
  for (const [slot, next] of place.slots) {
    for (const reading of readSlot(slot, tokens, at))
      walk(merged(next), tokens, { from: so.from, at: reading.end, slots: [...so.slots, reading] }, found);
  }
}

/** Phrases over the same tokens with the same slots are one, with the meanings of all. */
function record<M>(place: Node<M>, so: Walk, found: Found<M>[]): void {
  const same = found.findIndex(
    (one) =>
      one.to === so.at &&
      one.slots.length === so.slots.length &&
      one.slots.every((slot, at) => slot.from === so.slots[at]?.from && slot.end === so.slots[at]?.end),
  );
  if (same < 0) {
    found.push({ from: so.from, to: so.at, meanings: [...place.ends], slots: so.slots });
    return;
  }
  const known = found[same]!;
  const more = place.ends.filter((end) => !known.meanings.includes(end));
  if (more.length > 0) found[same] = { ...known, meanings: [...known.meanings, ...more] };
}
