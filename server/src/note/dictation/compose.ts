import type { Claim } from './claims.ts';
import { EntryPositions, notePath, type NotePath } from './paths.ts';
import type { Conflict, DictatedValue, DictationResult, ValuePart, Withdrawn } from './result.ts';
import type { Contradiction, Settled, Settlement } from './settle.ts';
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
}

/** Puts the result together: claims as values of the note, each with the words it was read from. */
export function compose(parts: Parts): DictationResult {
  const { text, settlement, verdict } = parts;
  const writer = new Writer(text, parts.entries);
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
    withdrawn: [...sideWithdrawn(text, parts.mentions), ...parts.superseded.map((claim) => writer.withdrawn(claim))],
  };
}

function sideResult(
  text: string,
  verdict: SideVerdict,
): { readonly values: readonly DictatedValue[]; readonly conflicts: readonly Conflict[] } {
  const { from, side, doubt, contradicting } = verdict;
  if (from === undefined) return { values: [], conflicts: [] };
  const place = { text: text.slice(from.start, from.end), start: from.start, end: from.end };
  const because = doubt ?? 'the side asks for confirmation or a second source, however clearly it was said';
  const value: DictatedValue = {
    path: ['eye'],
    value: side ?? null,
    ...place,
    state: side === undefined ? 'unresolved' : 'proposed',
    because,
  };
  if (doubt === undefined) return { values: [value], conflicts: [] };
  const candidates = (contradicting.length > 0 ? contradicting : [from]).map(({ start, end, side: said }) => ({
    value: said ?? '',
    text: text.slice(start, end),
    start,
    end,
  }));
  return { values: [value], conflicts: [{ path: ['eye'], because, candidates }] };
}

function sideWithdrawn(text: string, mentions: readonly SideMention[]): readonly Withdrawn[] {
  return mentions
    .filter(({ superseded, side }) => superseded && side !== undefined)
    .map(({ side, start, end }) => ({ path: ['eye'], value: side ?? '', text: text.slice(start, end), start, end }));
}

/** Parts in the order in which they are written, and how each is joined to the one before. */
const compositions: readonly {
  readonly path: RegExp;
  readonly parts: readonly string[];
  /** What stands between the parts; “first” and “last”: only that part is written. */
  readonly join: string;
}[] = [
  { path: /\.at$/u, parts: ['°', "o'clock", 'sector'], join: 'first' },
  { path: /\.dose$/u, parts: ['mg', 'mL'], join: ' in ' },
  { path: /\.regimen$/u, parts: ['frequency', 'duration'], join: ' ' },
  { path: /^lens\.placed$/u, parts: ['place', 'capture'], join: 'last' },
];

const severalEntries = /\[(side-port|next)\]/u;

class Writer {
  readonly #text: string;
  readonly #entries: Parts['entries'];
  readonly #positions = new EntryPositions();
  readonly #lists = new Map<string, number>();
  readonly #instances = new Map<string, number>();
  /** Entries whose kind was said with their number. */
  readonly #counts = new Set<string>();

  constructor(text: string, entries: Parts['entries']) {
    this.#text = text;
    this.#entries = entries;
  }

  values(settled: readonly Settled[]): DictatedValue[] {
    const ordered = [...settled].toSorted((a, b) => a.claim.start - b.claim.start);
    const composed = new Map<string, Settled[]>();
    const out: DictatedValue[] = [];
    for (const one of ordered) {
      if (one.claim.open && one.claim.denied) continue;
      const composition = compositions.find(({ path }) => path.test(one.claim.path));
      if (composition === undefined || one.claim.field.several === true || one.state === 'unresolved') {
        out.push(...this.#single(one));
        continue;
      }
      const group = composed.get(one.claim.path) ?? [];
      group.push(one);
      composed.set(one.claim.path, group);
    }
    for (const [path, group] of composed) out.push(this.#composed(path, group));
    return [...out, ...this.#baseValues(ordered)];
  }

  unresolved(one: Contradiction): DictatedValue {
    const [first] = one.claims;
    const { start, end } = first!;
    return {
      path: this.#path(first!),
      value: null,
      text: this.#words(start, end),
      start,
      end,
      state: 'unresolved',
      because: one.because,
    };
  }

  conflict(one: Contradiction): Conflict {
    const candidates = one.claims.map(({ value, denied, start, end, field }) => ({
      value: denied && field.deniedIn !== undefined ? `no ${value}` : value,
      text: this.#words(start, end),
      start,
      end,
    }));
    return { path: this.#path(one.claims[0]!), because: one.because, candidates };
  }

  withdrawn(claim: Claim): Withdrawn {
    return {
      path: notePath(claim.path, new EntryPositions()),
      value: claim.value,
      text: this.#words(claim.start, claim.end),
      start: claim.start,
      end: claim.end,
    };
  }

  #words(start: number, end: number): string {
    return this.#text.slice(start, end);
  }

  #single({ claim, state, because }: Settled): readonly DictatedValue[] {
    const place = { text: this.#words(claim.start, claim.end), start: claim.start, end: claim.end, state, because };
    if (claim.path === 'free-text[duration]')
      return [{ path: ['free-text'], value: `The operation took ${claim.value}.`, ...place }];
    if (claim.field.counts === true) return this.#counted(claim, place);
    return [{ path: this.#path(claim), value: claim.value, ...place }];
  }

  /** "Two side ports" are two entries of the list. */
  #counted(claim: Claim, place: Omit<DictatedValue, 'path' | 'value'>): readonly DictatedValue[] {
    const parts = [{ value: claim.value, start: claim.start, end: claim.end }];
    const entry = claim.path.slice(0, claim.path.lastIndexOf(']') + 1);
    for (let at = 1; at <= Number(claim.value); at += 1) this.#counts.add(`${entry} ${at}`);
    return Array.from({ length: Number(claim.value) }, (_, at) => ({
      path: notePath(claim.path, this.#positions, ` ${at + 1}`),
      value: 'side-port',
      ...place,
      parts,
    }));
  }

  #path(claim: Claim): NotePath {
    if (claim.path.startsWith('free-text[')) return ['free-text'];
    if (severalEntries.test(claim.path) && claim.field.several === true) {
      const at = (this.#instances.get(claim.path) ?? 0) + 1;
      this.#instances.set(claim.path, at);
      return notePath(claim.path, this.#positions, ` ${at}`);
    }
    const path = notePath(claim.path, this.#positions);
    const list = claim.field.several === true || claim.path === claim.field.deniedIn;
    if (!list) return path;
    const at = this.#lists.get(claim.path) ?? 0;
    this.#lists.set(claim.path, at + 1);
    return [...path, at];
  }

  #composed(path: string, group: readonly Settled[]): DictatedValue {
    const composition = compositions.find((one) => one.path.test(path))!;
    const order = [...group].sort(
      (a, b) => composition.parts.indexOf(a.claim.part) - composition.parts.indexOf(b.claim.part),
    );
    const parts: ValuePart[] = order.map(({ claim }) => ({ value: claim.value, start: claim.start, end: claim.end }));
    const texts = order.map(({ claim }) => claim.value);
    const value =
      composition.join === 'first'
        ? texts[0]!
        : composition.join === 'last'
          ? texts.at(-1)!
          : texts.join(composition.join);
    const start = Math.min(...parts.map((part) => part.start));
    const end = Math.max(...parts.map((part) => part.end));
    const weakest = order.find(({ state }) => state === 'proposed') ?? order[0]!;
    return {
      path: this.#path(order[0]!.claim),
      value,
      text: this.#words(start, end),
      start,
      end,
      state: weakest.state,
      because: weakest.because,
      parts,
    };
  }

  /** What an entry of a list is, whatever else was said of it: the route of a drug, the kind of an incision. */
  #baseValues(settled: readonly Settled[]): readonly DictatedValue[] {
    const done = new Set<string>();
    const seen = new Map<string, number>();
    return settled.flatMap(({ claim, state }): readonly DictatedValue[] => {
      const entry = claim.path.slice(0, claim.path.lastIndexOf(']') + 1);
      const base = this.#entries[entry];
      if (base === undefined || state === 'unresolved' || claim.field.counts === true) return [];
      const instance = claim.field.several === true ? (seen.get(entry) ?? 0) + 1 : 0;
      const suffix = instance === 0 ? '' : ` ${instance}`;
      if (instance > 0) seen.set(entry, instance);
      if (done.has(entry + suffix) || this.#counts.has(entry + suffix)) return [];
      done.add(entry + suffix);
      const place = { text: this.#words(claim.start, claim.end), start: claim.start, end: claim.end };
      return Object.entries(base).map(([key, value]) => ({
        path: notePath(`${entry}.${key}`, this.#positions, suffix),
        value,
        ...place,
        state,
        because: 'goes with the words beside it',
      }));
    });
  }
}
