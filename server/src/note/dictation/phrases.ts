import type { SlotName } from '@sideport/schemas/spoken/phrase.ts';
import { readPattern, type PatternTree } from './pattern.ts';
import type { SlotReading } from './slots.ts';
import type { Token } from './tokens.ts';

/** A place in the net of patterns: what may follow the words so far, and what they mean if they end here. */
interface Node<M> {
  readonly id: number;
  readonly words: Map<string, Node<M>[]>;
  readonly slots: [SlotName, Node<M>][];
  readonly ends: M[];
  /** Places that are reached without a word. */
  readonly open: Node<M>[];
}

/** All places where one can be after the same words; what follows is found once and kept. */
interface State<M> {
  /** The places that each word leads to. */
  readonly words: ReadonlyMap<string, readonly Node<M>[]>;
  readonly ends: readonly M[];
  readonly slots: readonly (readonly [SlotName, State<M>])[];
  readonly next: Map<string, State<M>>;
}

/** A phrase found in a dictation. `to` is the position after its last token. */
export interface Found<M> {
  readonly from: number;
  readonly to: number;
  readonly meanings: readonly M[];
  readonly slots: readonly SlotReading[];
}

/** Reads what a slot holds from a token on. */
export type ReadSlot = (slot: SlotName, at: number) => readonly SlotReading[];

/** Sounds of hesitation: a phrase runs on over them. */
export const hesitations = new Set(['um', 'uh', 'er', 'erm', 'umm', 'uhm', 'hmm', 'ah', 'eh']);

/** Phrases that can be found in a dictation, each with its meaning. */
export class Phrases<M> {
  readonly #starts: Node<M>[] = [];
  readonly #states = new Map<string, State<M>>();
  #count = 0;
  #root: State<M> | undefined;

  /** Enters a pattern with what it means. Only before the first search. */
  add(pattern: string, meaning: M): void {
    const end = this.#node();
    end.ends.push(meaning);
    this.#starts.push(this.#enter(readPattern(pattern), end));
  }

  /** Every phrase that begins at a token, with all its meanings. */
  at(tokens: readonly Token[], from: number, readSlot: ReadSlot): readonly Found<M>[] {
    this.#root ??= this.#state(this.#starts);
    const found: Found<M>[] = [];
    this.#walk(this.#root, from, [], { tokens, from, readSlot, found });
    return found;
  }

  #node(): Node<M> {
    return { id: this.#count++, words: new Map(), slots: [], ends: [], open: [] };
  }

  /** The place from which a pattern leads to `target`. */
  #enter(tree: PatternTree, target: Node<M>): Node<M> {
    if (tree.kind === 'sequence') return tree.parts.reduceRight((next, part) => this.#enter(part, next), target);
    const place = this.#node();
    if (tree.kind === 'either') place.open.push(...tree.parts.map((part) => this.#enter(part, target)));
    else if (tree.kind === 'slot') place.slots.push([tree.slot, target]);
    else place.words.set(tree.word, [target]);
    return place;
  }

  /** The state of some places and all that are reached from them without a word. */
  #state(places: readonly Node<M>[]): State<M> {
    const reached = new Map<number, Node<M>>();
    const waiting = [...places];
    for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
      if (reached.has(place.id)) continue;
      reached.set(place.id, place);
      waiting.push(...place.open);
    }
    const nodes = [...reached.values()].filter(
      (place) => place.words.size > 0 || place.slots.length > 0 || place.ends.length > 0,
    );
    const key = nodes
      .map(({ id }) => id)
      .toSorted((a, b) => a - b)
      .join();
    const known = this.#states.get(key);
    if (known !== undefined) return known;
    const state: State<M> = {
      words: wordsOf(nodes),
      ends: [...new Set(nodes.flatMap(({ ends }) => ends))],
      slots: this.#slots(nodes),
      next: new Map(),
    };
    this.#states.set(key, state);
    return state;
  }

  #slots(nodes: readonly Node<M>[]): readonly (readonly [SlotName, State<M>])[] {
    const bySlot = new Map<SlotName, Node<M>[]>();
    for (const { slots } of nodes)
      for (const [slot, target] of slots) bySlot.set(slot, [...(bySlot.get(slot) ?? []), target]);
    return [...bySlot].map(([slot, targets]) => [slot, this.#state(targets)] as const);
  }

  #after(state: State<M>, word: string): State<M> | undefined {
    const known = state.next.get(word);
    if (known !== undefined) return known;
    const targets = state.words.get(word);
    if (targets === undefined) return undefined;
    const next = this.#state(targets);
    state.next.set(word, next);
    return next;
  }

  #walk(state: State<M>, at: number, slots: readonly SlotReading[], search: Search<M>): void {
    if (state.ends.length > 0 && at > search.from) record(state.ends, at, slots, search);
    const { tokens, from, readSlot } = search;
    let next = at;
    while (next > from && hesitations.has(tokens[next]?.word ?? '')) next += 1;
    const token = tokens[next];
    if (token === undefined || token.strength === 'sentence') return;
    const after = this.#after(state, token.word);
    if (after !== undefined) this.#walk(after, next + 1, slots, search);
    if (token.kind === 'break') return;
    for (const [slot, then] of state.slots) {
      for (const reading of readSlot(slot, next)) this.#walk(then, reading.end, [...slots, reading], search);
    }
  }
}

interface Search<M> {
  readonly tokens: readonly Token[];
  readonly from: number;
  readonly readSlot: ReadSlot;
  readonly found: Found<M>[];
}

function wordsOf<M>(nodes: readonly Node<M>[]): ReadonlyMap<string, readonly Node<M>[]> {
  const out = new Map<string, Node<M>[]>();
  for (const { words } of nodes) {
    for (const [word, targets] of words) {
      const known = out.get(word);
      if (known === undefined) out.set(word, [...targets]);
      else known.push(...targets);
    }
  }
  return out;
}

/** Phrases over the same tokens with the same slots are one, with the meanings of all. */
function record<M>(ends: readonly M[], to: number, slots: readonly SlotReading[], { from, found }: Search<M>): void {
  const same = found.findIndex((one) => one.to === to && sameSlots(one.slots, slots));
  if (same < 0) {
    found.push({ from, to, meanings: ends, slots });
    return;
  }
  const known = found[same]!;
  const more = ends.filter((end) => !known.meanings.includes(end));
  if (more.length > 0) found[same] = { ...known, meanings: [...known.meanings, ...more] };
}

function sameSlots(a: readonly SlotReading[], b: readonly SlotReading[]): boolean {
  return a.length === b.length && a.every((slot, at) => slot.from === b[at]?.from && slot.end === b[at]?.end);
}
