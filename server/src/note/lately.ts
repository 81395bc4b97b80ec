const KEPT = 4;

/**
 * What was made of the things met last: one note is asked the same many times in a row, by one check after the other.
 * A WeakMap, or a Map with its oldest entry taken out, would answer the same; but the engine lets the values of both,
 * and the notes they point to, live through its short collections, and a check of thousands of notes then spends a
 * quarter of its time on copying them.
 */
export class Lately<Key, Value extends object> {
  readonly #keys: Key[] = [];
  readonly #values: Value[] = [];
  #next = 0;

  get(key: Key): Value | undefined {
    const at = this.#keys.indexOf(key);
    return at < 0 ? undefined : this.#values[at];
  }

  /** Keeps what was made of the key in the place of the oldest. */
  set(key: Key, value: Value): void {
    this.#keys[this.#next] = key;
    this.#values[this.#next] = value;
    this.#next = (this.#next + 1) % KEPT;
  }
}
