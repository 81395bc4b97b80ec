/** A path of the note, list positions counted from 0. */
export type NotePath = readonly (string | number)[];

/** Gives every named list entry a position, in the order in which entries are first spoken of. */
export class EntryPositions {
  readonly #positions = new Map<string, number>();
  readonly #next = new Map<string, number>();

  /** `first` is the number of entries each list has already. */
  constructor(first: Readonly<Record<string, number>> = {}) {
    for (const [list, count] of Object.entries(first)) this.#next.set(list, count);
  }

  /** The position of an entry, a new one at the end of its list. */
  of(list: string, entry: string): number {
    const key = `${list}[${entry}]`;
    const known = this.#positions.get(key);
    if (known !== undefined) return known;
    const position = this.#next.get(list) ?? 0;
    this.#next.set(list, position + 1);
    this.#positions.set(key, position);
    return position;
  }

  /** Makes a known entry stand at a position. */
  set(list: string, entry: string, position: number): void {
    this.#positions.set(`${list}[${entry}]`, position);
    this.#next.set(list, Math.max(this.#next.get(list) ?? 0, position + 1));
  }
}

const step = /^([^[\]]+)(?:\[([^[\]]*)\])?$/u;

/** "incisions[main].at" as a path of the note; `suffix` tells apart the entries of one name. */
export function notePath(template: string, positions: EntryPositions, suffix = ''): NotePath {
  const out: (string | number)[] = [];
  let list = '';
  for (const part of template.split(/\.(?![^[]*\])/u)) {
    const match = step.exec(part);
    if (match?.[1] === undefined) throw new Error(`“${template}” is no path`);
    list = list === '' ? match[1] : `${list}.${match[1]}`;
    out.push(match[1]);
    if (match[2] !== undefined) out.push(positions.of(list, match[2] + suffix));
  }
  return out;
}
