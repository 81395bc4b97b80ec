import type { Context } from './context.ts';
import { neighbour } from './gaps.ts';
import { across, endsPart } from './islands.ts';

/** Numbers that wait for the one that replaces them. */
export class HeldNumbers {
  readonly #context: Context;
  /** A number before a word of correction, by the position of the number that replaces it. */
  readonly #held = new Map<number, number>();

  constructor(context: Context) {
    this.#context = context;
    this.#hold();
  }

  /** The number that the number at a position replaces. */
  replacedBy(index: number): number | undefined {
    return this.#held.get(index);
  }

  isReplaced(index: number): boolean {
    return [...this.#held.values()].includes(index);
  }

  replace(old: number, by: number): void {
    this.#held.set(by, old);
  }

  /** A number, a word of correction, another number that measures the same: the second stands for the first. */
  #hold(): void {
    const { items } = this.#context;
    items.forEach((item, index) => {
      const cue = item.meanings.find(({ kind }) => kind === 'cue');
      if (cue?.kind !== 'cue') return;
      if (endsPart(this.#context, cue.cue, index)) {
        this.#holdBackwards(index);
        return;
      }
      const [before, after] = [across(this.#context, index, -1), across(this.#context, index, 1)];
      if (before === undefined || after === undefined || this.#held.has(after)) return;
      const [old, now] = [items[before]!.amount, items[after]!.amount];
      if (old === undefined || now === undefined) return;
      if (old.unit === undefined || now.unit === undefined || old.unit === now.unit) this.#held.set(after, before);
    });
  }

  /** "Three eighty, three ninety rather". */
  #holdBackwards(index: number): void {
    const right = across(this.#context, index, -1);
    const wrong = right === undefined ? undefined : neighbour(this.#context.items, right, -1);
    if (right === undefined || wrong === undefined) return;
    const gap = this.#context.gapOver(wrong, right);
    const numbers = [wrong, right].every((at) => this.#context.items[at]!.amount !== undefined);
    if (numbers && gap.content === 0 && gap.sentences === 0 && gap.plain.length === 0) this.#held.set(right, wrong);
  }
}
