import { entryInNote } from './entries.ts';
import type { NoteView } from './note-view.ts';

/** A path of the note, list positions counted from 0. */
export type NotePath = readonly (string | number)[];

/** Gives every named list entry a position, in the order in which entries are first spoken of. */
export class EntryPositions {
  readonly #positions = new Map<string, number>();
  readonly #next = new Map<string, number>();
  readonly #view: NoteView;

  constructor(view: NoteView) {
    this.#view = view;
  }

  /** The position of an entry: where the note has it, else a new one at the end of its list. */
  of(list: string, entry: string): number {
    const key = `${list}[${entry}]`;
    const known = this.#positions.get(key) ?? entryInNote(this.#view, list, entry);
    const position = known ?? this.next(list);
    this.#positions.set(key, position);
    return position;
  }

  /** Makes an entry stand at a position. */
  set(list: string, entry: string, position: number): void {
    this.#positions.set(`${list}[${entry}]`, position);
  }

  /** A new position at the end of a list. */
  next(list: string): number {
    const position = this.#next.get(list) ?? this.#view.entries(list.split('.')).length;
    this.#next.set(list, position + 1);
    return position;
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
