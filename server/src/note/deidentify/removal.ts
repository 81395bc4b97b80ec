/** What happened to one field, over all records; the value itself is never told. */
export interface Removal {
  /** Path of the field without list positions. */
  readonly field: string;
  readonly how: 'dropped' | 'pseudonym' | 'date changed' | 'text withheld' | 'text kept' | 'age capped';
  readonly count: number;
}

/** Counts what was removed; add up as many records as there are. */
export class RemovalCount {
  readonly #counts = new Map<string, { how: Removal['how']; field: string; count: number }>();

  add(field: string, how: Removal['how']): void {
    const key = `${how}\n${field}`;
    const entry = this.#counts.get(key) ?? { field, how, count: 0 };
    entry.count += 1;
    this.#counts.set(key, entry);
  }

  list(): readonly Removal[] {
    return [...this.#counts.values()].toSorted((a, b) => compare(a.how, b.how) || compare(a.field, b.field));
  }
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
