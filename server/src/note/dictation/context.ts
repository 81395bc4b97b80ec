import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import type { Claim } from './claims.ts';
import { gapBetween, isPlain, joinedGaps, neighbour, type Gap } from './gaps.ts';
import type { Item } from './scan.ts';
import type { Called, Meaning, Table } from './table.ts';
import type { Token } from './tokens.ts';

/** A field whose own name was said and that waits for its value. */
export interface OpenField {
  readonly fields: readonly SpokenField[];
  readonly index: number;
}

/** What is being spoken about while a dictation is read from left to right. */
export class Context {
  readonly items: readonly Item[];
  readonly tokens: readonly Token[];
  readonly table: Table;
  readonly #sentences: readonly number[];
  /** The claims so far, each with the position of its island. */
  readonly claims: { readonly claim: Claim; readonly index: number }[] = [];
  topic: string | undefined;
  topicAt = 0;
  open: OpenField | undefined;
  /** A correction is under way: a value that is there already does not speak against another. */
  correcting = false;

  constructor(items: readonly Item[], tokens: readonly Token[], table: Table) {
    this.items = items;
    this.tokens = tokens;
    this.table = table;
    let sentence = 0;
    this.#sentences = tokens.map((token) => (token.strength === 'sentence' ? sentence++ : sentence));
  }

  /** The sentence an island stands in, counted from 0. */
  sentence(index: number): number {
    return this.#sentences[this.items[index]!.from] ?? 0;
  }

  setTopic(topic: string, index: number): void {
    this.topic = topic;
    this.topicAt = index;
  }

  /** A subject and those it is a part of. */
  withAncestors(subject: string): readonly string[] {
    const within = this.table.subjects.get(subject)?.within;
    return within === undefined ? [subject] : [subject, ...this.withAncestors(within)];
  }

  isAbout(field: SpokenField): boolean {
    if (this.topic === undefined) return false;
    const subjects = field.exactly === true ? [this.topic] : this.withAncestors(this.topic);
    return subjects.some((subject) => field.about.includes(subject));
  }

  /** Whether a name that several fields share can mean this one here. */
  canBeNamed({ field, onlyAbout }: Called, index: number): boolean {
    return !onlyAbout || (this.isAbout(field) && this.sentencesSinceTopic(index) === 0);
  }

  /** Sentences since the subject was named. */
  sentencesSinceTopic(index: number): number {
    return this.sentence(index) - this.sentence(this.topicAt);
  }

  /** Whether what is spoken about in this sentence is a part of a subject: a drug given by a route. */
  isPartOf(subject: string, index: number): boolean {
    return (
      this.topic !== undefined &&
      this.topic !== subject &&
      this.withAncestors(this.topic).includes(subject) &&
      this.sentencesSinceTopic(index) === 0
    );
  }

  isOpen(field: SpokenField): boolean {
    return this.open?.fields.includes(field) === true;
  }

  gap(left: number, right: number): Gap {
    return gapBetween(this.tokens, this.items[left]!.to, this.items[right]!.from);
  }

  /** What stands between two islands beside the islands between them. */
  gapOver(left: number, right: number): Gap {
    let whole = this.gap(left, left + 1);
    for (let at = left + 1; at < right; at += 1) whole = joinedGaps(whole, this.gap(at, at + 1));
    return whole;
  }

  /** Islands between two others that are no asides. */
  between(left: number, right: number): number {
    return this.items.slice(left + 1, right).filter((item) => !isPlain(item)).length;
  }

  next(index: number): number | undefined {
    return neighbour(this.items, index, 1);
  }

  /** The next island in the sentence that opens a subject, with only attributes and numbers before it. */
  anchorAfter(index: number): number | undefined {
    for (let at = index + 1; at < this.items.length; at += 1) {
      if (this.gap(at - 1, at).sentences > 0) return undefined;
      const item = this.items[at]!;
      if (isPlain(item)) continue;
      if (item.meanings.some(({ kind }) => kind === 'cue' || kind === 'side' || kind === 'opaque')) return undefined;
      if (item.meanings.some(anchors)) return at;
      if (item.meanings.some(({ kind }) => kind === 'denial' || kind === 'doubt')) return undefined;
    }
    return undefined;
  }

  /** The subjects that an island opens. */
  subjectsOf(index: number): readonly string[] {
    return this.items[index]!.meanings.flatMap((meaning) => {
      if (meaning.kind === 'subject') return this.withAncestors(meaning.subject.id);
      if (meaning.kind === 'called') return meaning.field.about;
      if (opensOwn(meaning)) return [meaning.field.opens!];
      return isFree(meaning) ? this.withAncestors(meaning.field.opens ?? meaning.field.about[0]!) : [];
    });
  }

  /** How much a value already given speaks against another for the same field. */
  filled(field: SpokenField, part: string): number {
    if (field.several === true || this.correcting) return 0;
    const since = this.topicAt - 3;
    return this.claims.some(
      ({ claim, index }) => claim.field === field && claim.part === part && !claim.superseded && index >= since,
    )
      ? 3
      : 0;
  }

  /** The word before an island. */
  wordBefore(item: Item, back = 1): string {
    return this.tokens[item.from - back]?.word ?? '';
  }
}

function anchors(meaning: Meaning): boolean {
  return meaning.kind === 'subject' || meaning.kind === 'called' || isFree(meaning) || opensOwn(meaning);
}

/** A value that needs no context. */
export function isFree(meaning: Meaning): meaning is Extract<Meaning, { kind: 'value' | 'form' }> {
  return (
    (meaning.kind === 'value' && meaning.value.bound !== true) ||
    (meaning.kind === 'form' && meaning.form.bound !== true)
  );
}

/** A word that fits several fields and opens a subject of its own in each: the name of a drug. */
function opensOwn(meaning: Meaning): meaning is Extract<Meaning, { kind: 'value' }> {
  return meaning.kind === 'value' && meaning.value.bound === true && meaning.field.opens !== undefined;
}
