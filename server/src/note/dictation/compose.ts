import type { Claim } from './claims.ts';
import { composed, isPart } from './composed.ts';
import type { NoteView } from './note-view.ts';
import { EntryPositions, notePath, type NotePath } from './paths.ts';
import type { Conflict, DictatedValue, DictationResult, Withdrawn } from './result.ts';
import type { Contradiction, Settled, Settlement } from './settle.ts';
import { sideResult, sidesWithdrawn } from './side-result.ts';
import type { SideMention, SideVerdict } from './sides.ts';
import type { Stretch } from './unmatched.ts';

interface Parts {
  readonly text: string;
  readonly settlement: Settlement;
  readonly verdict: SideVerdict;
  readonly mentions: readonly SideMention[];
  readonly superseded: readonly Claim[];
  readonly stretches: readonly Stretch[];
  readonly entries: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly view: NoteView;
}

/** Puts the result together: claims as values of the note, each with the words it was read from. */
export function compose(parts: Parts): DictationResult {
  const { text, settlement, verdict } = parts;
  const writer = new Writer(parts);
  const side = sideResult(text, verdict);
  const values = [
    ...side.values,
    ...writer.values(settlement.settled),
    ...settlement.contradictions.map((one) => writer.unresolved(one)),
  ];
  return {
    version: 1,
    values: values.toSorted((a, b) => a.start - b.start),
    unmatched: parts.stretches.map(({ start, end }) => ({ start, end, text: text.slice(start, end) })),
    conflicts: [...side.conflicts, ...settlement.contradictions.map((one) => writer.conflict(one))],
    withdrawn: [...sidesWithdrawn(text, parts.mentions), ...parts.superseded.map((claim) => writer.withdrawn(claim))],
  };
}

/** Entries of which a note has several of one kind. */
const repeated = /\[(?:side-port|next)\]/u;

type Place = Pick<DictatedValue, 'text' | 'start' | 'end'>;

class Writer {
  readonly #parts: Parts;
  readonly #positions: EntryPositions;
  readonly #instances = new Map<string, number>();
  /** Entries whose kind was said together with their number. */
  readonly #counted = new Set<string>();

  constructor(parts: Parts) {
    this.#parts = parts;
    this.#positions = new EntryPositions(parts.view);
  }

  values(settled: readonly Settled[]): readonly DictatedValue[] {
    const ordered = settled
      .filter(({ claim }) => !(claim.open && claim.denied))
      .toSorted((a, b) => a.claim.start - b.claim.start);
    // What can be written takes the first places of its list; what is left open comes behind it.
    for (const { claim, state } of ordered)
      if (state !== 'unresolved' && claim.field.counts !== true && !repeated.test(claim.path))
        notePath(claim.path, this.#positions);
    const groups = new Map<string, Settled[]>();
    for (const one of ordered)
      if (isPart(one)) groups.set(one.claim.path, [...(groups.get(one.claim.path) ?? []), one]);
    return [
      ...ordered.filter((one) => !isPart(one)).flatMap((one) => this.#single(one)),
      ...[...groups].map(([path, group]) => this.#composed(path, group)),
      ...this.#baseValues(ordered),
    ];
  }

  unresolved(one: Contradiction): DictatedValue {
    const first = one.claims[0]!;
    return { path: this.#path(first), value: null, ...this.#place(first), state: 'unresolved', because: one.because };
  }

  conflict(one: Contradiction): Conflict {
    const candidates = one.claims.map((claim) => ({
      value: claim.denied && claim.field.deniedIn !== undefined ? `no ${claim.value}` : claim.value,
      ...this.#place(claim),
    }));
    return { path: this.#path(one.claims[0]!), because: one.because, candidates };
  }

  withdrawn(claim: Claim): Withdrawn {
    return { path: notePath(claim.path, this.#positions), value: claim.value, ...this.#place(claim) };
  }

  #place({ start, end }: { readonly start: number; readonly end: number }): Place {
    return { text: this.#parts.text.slice(start, end), start, end };
  }

  #single({ claim, state, because }: Settled): readonly DictatedValue[] {
    const judged = { ...this.#place(claim), state, because, ...doubt(claim.heard) };
    if (claim.path === 'free-text[duration]') {
      return [{ path: ['free-text'], value: `The operation took ${claim.value}.`, ...judged }];
    }
    if (claim.field.counts === true) return this.#counts(claim, judged);
    return [{ path: this.#path(claim), value: claim.value, ...judged }];
  }

  /** "Two side ports" are two entries of the list. */
  #counts(claim: Claim, judged: Omit<DictatedValue, 'path' | 'value'>): readonly DictatedValue[] {
    const parts = [{ value: claim.value, start: claim.start, end: claim.end }];
    const [list, entry] = listOf(claim.path);
    return Array.from({ length: Number(claim.value) }, (_, at) => {
      this.#instance(list, entry, at + 1);
      this.#counted.add(`${list}[${entry} ${at + 1}]`);
      return {
        path: notePath(claim.path, this.#positions, ` ${at + 1}`),
        value: this.#parts.entries[`${list}[${entry}]`]?.['kind'] ?? '',
        ...judged,
        parts,
      };
    });
  }

  #composed(path: string, group: readonly Settled[]): DictatedValue {
    const { value, parts, weakest } = composed(path, group);
    const start = Math.min(...parts.map((part) => part.start));
    const end = Math.max(...parts.map((part) => part.end));
    const { state, because, claim } = weakest;
    const heard = group.some((one) => one.claim.heard);
    const judged = { ...this.#place({ start, end }), state, because, parts, ...doubt(heard) };
    if (!value.startsWith('for ')) return { path: this.#path(claim), value, ...judged };
    // How long without how often is no regimen: it is kept in words.
    const drug = listOf(path)[1];
    return { path: ['after-care', 'instructions'], value: `${drug} ${value}`, ...judged };
  }

  #path(claim: Claim): NotePath {
    if (claim.path.startsWith('free-text[')) return ['free-text'];
    if (repeated.test(claim.path) && claim.field.several === true) return this.#repeatedPath(claim);
    const path = notePath(claim.path, this.#positions);
    const isList = claim.field.several === true || claim.path === claim.field.deniedIn;
    return isList ? [...path, this.#positionOf(path, claim.value)] : path;
  }

  /** Where a list has a value already, or the next position of the list. */
  #positionOf(path: NotePath, value: string): number {
    const list = path.join('.');
    const found = this.#parts.view
      .entries(path)
      .findIndex((node) => node?.kind === 'scalar' && node.text.toLowerCase() === value.toLowerCase());
    return found < 0 ? this.#positions.next(list) : found;
  }

  #repeatedPath(claim: Claim): NotePath {
    const [list, entry, key] = listOf(claim.path);
    const instance = (this.#instances.get(claim.path) ?? 0) + 1;
    this.#instances.set(claim.path, instance);
    const same = this.#parts.view.entryLike(list.split('.'), {
      ...this.#parts.entries[`${list}[${entry}]`],
      [key]: claim.value,
    });
    if (same !== undefined) this.#positions.set(list, `${entry} ${instance}`, same);
    else this.#instance(list, entry, instance);
    return notePath(claim.path, this.#positions, ` ${instance}`);
  }

  /** The k-th entry of a kind is the k-th of that kind in the note, or a new one. */
  #instance(list: string, entry: string, count: number): void {
    const base = this.#parts.entries[`${list}[${entry}]`];
    if (base === undefined) return;
    let found: number | undefined = -1;
    for (let seen = 0; seen < count && found !== undefined; seen += 1)
      found = this.#parts.view.entryLike(list.split('.'), base, found + 1);
    if (found !== undefined) this.#positions.set(list, `${entry} ${count}`, found);
  }

  /** What an entry of a list is, whatever else was said of it: the route of a drug, the kind of an incision. */
  #baseValues(settled: readonly Settled[]): readonly DictatedValue[] {
    const done = new Set<string>();
    const instances = new Map<string, number>();
    return settled.flatMap(({ claim, state }): readonly DictatedValue[] => {
      const [list, entry] = listOf(claim.path);
      const base = this.#parts.entries[`${list}[${entry}]`];
      if (base === undefined || state === 'unresolved' || claim.field.counts === true) return [];
      const instance = claim.field.several === true ? (instances.get(entry) ?? 0) + 1 : 0;
      if (instance > 0) instances.set(entry, instance);
      const suffix = instance === 0 ? '' : ` ${instance}`;
      const name = `${list}[${entry}${suffix}]`;
      if (done.has(name) || this.#counted.has(name)) return [];
      done.add(name);
      return Object.entries(base).map(([key, value]) => ({
        path: notePath(`${list}[${entry}].${key}`, this.#positions, suffix),
        value,
        ...this.#place(claim),
        state,
        because: 'goes with the words beside it',
        ...doubt(claim.heard),
      }));
    });
  }
}

function doubt(heard: boolean): Pick<DictatedValue, 'doubted'> {
  return heard ? { doubted: true } : {};
}

/** "incisions[side-port].at" as list, entry and key; empty where the path names no entry. */
function listOf(path: string): readonly [list: string, entry: string, key: string] {
  const match = /^(.*)\[([^\]]*)\](?:\.(.*))?$/u.exec(path);
  return [match?.[1] ?? '', match?.[2] ?? '', match?.[3] ?? ''];
}
