import type { Cue } from '@sideport/schemas/spoken/cues.ts';
import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import { accepts, type Claim } from './claims.ts';
import type { Context } from './context.ts';
import { neighbour } from './gaps.ts';
import type { Polarity } from './polarity.ts';
import type { RankedField } from './rank-amounts.ts';
import type { Item } from './scan.ts';
import type { Amount } from './spoken-amounts.ts';
import type { Meaning } from './table.ts';

/** Words of correction and what they reach. */
export class Corrections {
  readonly #context: Context;
  readonly #polarity: ReadonlyMap<number, Polarity>;
  /** A number before a word of correction, by the position of the number that replaces it. */
  readonly #held = new Map<number, number>();
  /** Islands that only say what is taken back. */
  readonly #taken = new Set<number>();
  #scope: { readonly cue: Cue; readonly index: number; readonly sentence: number } | undefined;

  constructor(context: Context, polarity: ReadonlyMap<number, Polarity>) {
    this.#context = context;
    this.#polarity = polarity;
    this.#hold();
  }

  /** The number that the number at a position replaces. */
  replacedBy(index: number): number | undefined {
    return this.#held.get(index);
  }

  /** Whether an island waits for the one that replaces it, or was taken with the words of correction. */
  isReplaced(index: number): boolean {
    return [...this.#held.values()].includes(index) || this.#taken.has(index);
  }

  /** "Target plano, make that minus a half": the field of the value before the word, where a number can stand in it. */
  sister(amount: Amount, index: number): RankedField | undefined {
    if (this.#scope === undefined || this.#across(this.#scope.index, 1) !== index) return undefined;
    const before = this.#across(this.#scope.index, -1);
    if (before === undefined || this.#context.items[before]!.amount !== undefined) return undefined;
    const fields = this.#context.claims.filter((entry) => entry.index === before).map(({ claim }) => claim.field);
    const of = (this.#context.table.amountsIn.get(amount.unit ?? '') ?? []).find(
      (one) => fields.includes(one.field) && accepts(one.amount, amount, { named: true, afterAt: false }),
    );
    return of === undefined ? undefined : { of, score: SISTER, heard: false };
  }

  /** Whether a word corrects here: weak ones only between two values of one kind. */
  corrects(cue: Cue, index: number): boolean {
    if (cue.names === true) return this.#named(index) !== undefined;
    if (cue.recalls === true) return this.#recalled(index) !== undefined;
    if (cue.strength === 'strong') return true;
    const [before, after] = [this.#across(index, -1), this.#across(index, 1)];
    if (before === undefined || after === undefined) return false;
    if (this.#held.get(after) === before) return true;
    const { items } = this.#context;
    return (
      (isLength(items[after]!) && items[before]!.amount !== undefined) ||
      (sharesField(items[before]!, items[after]!) && !this.#isDirectDenial(index, after))
    );
  }

  /** Opens the reach of a word of correction: to the end of its sentence, of the next one when it ends its own. */
  begin(cue: Cue, index: number): readonly number[] {
    if (cue.names === true) return this.#retract(index);
    if (cue.recalls === true) return this.#recall(cue, index);
    if (this.#scope?.cue.strength === 'strong' && cue.strength === 'weak') return [index];
    const next = this.#context.next(index);
    const ends = next !== undefined && this.#context.gap(index, next).sentences > 0;
    this.#scope = { cue, index, sentence: this.#context.sentence(index) + (ends ? 1 : 0) };
    const before = this.#across(index, -1);
    if (cue.withdraws === true && before !== undefined) this.#withdraw(({ index: at }) => at === before);
    const after = this.#across(index, 1);
    const shortened =
      before !== undefined &&
      after !== undefined &&
      isLength(this.#context.items[after]!) &&
      this.#context.items[before]!.amount !== undefined;
    return shortened ? [index, before] : [index];
  }

  /** The thing named behind "forget the", when something was said of it shortly before. */
  #named(index: number): { readonly at: number; readonly claims: readonly Claim[] } | undefined {
    const at = this.#context.next(index);
    if (at === undefined || at !== index + 1) return undefined;
    const gap = this.#context.gap(index, at);
    if (gap.content > 0 || gap.parts > 0 || gap.sentences > 0) return undefined;
    const subjects = this.#context.items[at]!.meanings.flatMap(thingsOf);
    const claims = this.#context.claims
      .filter((entry) => this.#context.sentence(index) - this.#context.sentence(entry.index) <= RECENT)
      .map(({ claim }) => claim)
      .filter(({ superseded, field }) => !superseded && field.about.some((subject) => subjects.includes(subject)));
    return claims.length === 0 ? undefined : { at, claims };
  }

  #retract(index: number): readonly number[] {
    const named = this.#named(index);
    if (named === undefined) return [];
    this.#taken.add(named.at);
    const taken = new Set(named.claims);
    this.#withdraw(({ claim }) => taken.has(claim));
    return [index, named.at];
  }

  /** What "earlier I said" quotes, and the value behind it that puts it right. */
  #recalled(index: number): { readonly quoted: number; readonly right: number } | undefined {
    const first = this.#context.next(index);
    if (first === undefined || this.#context.gap(index, first).content > 0) return undefined;
    const isName = this.#context.items[first]!.meanings.some(({ kind }) => kind === 'subject' || kind === 'called');
    const quoted = isName ? this.#context.next(first) : first;
    if (quoted === undefined || this.#context.gap(first, quoted).content > 0) return undefined;
    const isNumber = this.#context.items[quoted]!.amount !== undefined;
    for (let at = quoted, right = this.#context.next(at); right !== undefined; right = this.#context.next(at)) {
      const gap = this.#context.gap(at, right);
      if (gap.content > 1 || this.#context.sentence(right) - this.#context.sentence(quoted) > 1) return undefined;
      const item = this.#context.items[right]!;
      const isSame = isNumber ? item.amount !== undefined : sharesField(this.#context.items[quoted]!, item);
      if (isSame && gap.plain.some((word) => states.has(word))) return { quoted, right };
      at = right;
    }
    return undefined;
  }

  #recall(cue: Cue, index: number): readonly number[] {
    const recalled = this.#recalled(index);
    if (recalled === undefined) return [];
    const { quoted, right } = recalled;
    if (this.#context.items[quoted]!.amount === undefined) this.#taken.add(quoted);
    else this.#held.set(right, quoted);
    this.#scope = { cue, index, sentence: this.#context.sentence(right) };
    return [index, quoted];
  }

  /** Whether a value at a position corrects an earlier one. */
  reaches(index: number): boolean {
    if (this.#scope === undefined) return false;
    if (this.#scope.cue.strength === 'weak' || this.#context.sentence(index) <= this.#scope.sentence) return true;
    this.#scope = undefined;
    return false;
  }

  /** A weak word reaches one value only. */
  afterClaim(): void {
    if (this.#scope?.cue.strength === 'weak') this.#scope = undefined;
  }

  /** Withdraws what a claim replaces: the last value of its field or of its family, or the whole last list when a list follows. */
  supersede(claim: Claim, index: number): void {
    const scopeAt = this.#scope?.index ?? index;
    const earlier = this.#context.claims.filter(({ claim: old, index: at }) => !old.superseded && at < scopeAt);
    const own = earlier.filter(({ claim: old }) => old.field === claim.field && old.part === claim.part);
    const last = own.at(-1);
    if (last === undefined) {
      this.#supersedeFamily(claim, scopeAt);
      return;
    }
    const several = claim.field.several === true;
    const wholeList = several && this.runFollows(index);
    for (const { claim: old } of own) {
      if (!several || old === last.claim || (wholeList && old.from >= last.claim.from - 6)) old.superseded = true;
    }
  }

  /** Whether a number is the first of several joined by "and". */
  runFollows(index: number): boolean {
    const next = this.#context.next(index);
    if (next === undefined || this.#context.items[next]!.amount === undefined) return false;
    return this.#context.gap(index, next).plain.includes('and');
  }

  /** "Cefuroxime, sorry, moxifloxacin": values of sister fields replace each other when they stand on both sides of the word. */
  #supersedeFamily(claim: Claim, scopeAt: number): void {
    const before = this.#across(scopeAt, -1);
    const family = familyOf(claim.field);
    if (before === undefined || family === undefined) return;
    const start = this.#context.items[before]!;
    const rivals = this.#context.claims.filter(
      ({ claim: old, index }) =>
        !old.superseded &&
        familyOf(old.field) === family &&
        old.field !== claim.field &&
        (index === before || old.to === start.from),
    );
    for (const { claim: old } of rivals) {
      const entry = old.field.path.slice(0, old.field.path.lastIndexOf(']') + 1);
      this.#withdraw(({ claim: other }) => other.path.startsWith(entry));
    }
  }

  #withdraw(which: (entry: { readonly claim: Claim; readonly index: number }) => boolean): void {
    for (const entry of this.#context.claims) if (which(entry)) entry.claim.superseded = true;
  }

  /** A number, a word of correction, another number that measures the same: the second stands for the first. */
  #hold(): void {
    const { items } = this.#context;
    items.forEach((item, index) => {
      if (!item.meanings.some(({ kind }) => kind === 'cue')) return;
      const [before, after] = [this.#across(index, -1), this.#across(index, 1)];
      if (before === undefined || after === undefined || this.#held.has(after)) return;
      const [old, now] = [items[before]!.amount, items[after]!.amount];
      if (old === undefined || now === undefined) return;
      if (old.unit === undefined || now.unit === undefined || old.unit === now.unit) this.#held.set(after, before);
    });
  }

  /** The island beyond the words of correction at a position, and beyond phrases that say nothing. */
  #across(index: number, step: 1 | -1): number | undefined {
    const { items } = this.#context;
    for (let at = index; ;) {
      const next = neighbour(items, at, step);
      if (next === undefined) return undefined;
      const gap = step === 1 ? this.#context.gapOver(at, next) : this.#context.gapOver(next, at);
      if (gap.content > 0 || (step === -1 && gap.sentences > 0)) return undefined;
      if (!items[next]!.meanings.some(({ kind }) => kind === 'cue')) return next;
      at = next;
    }
  }

  #isDirectDenial(cue: number, after: number): boolean {
    const polarity = this.#polarity.get(after);
    if (polarity?.sense !== 'denied' || !polarity.by.includes(cue) || this.#context.gap(cue, after).parts > 0)
      return false;
    return this.#context.items[after]!.meanings.some(
      (meaning) =>
        meaning.kind === 'value' &&
        (meaning.value.denied !== undefined ||
          meaning.value.deniedAs !== undefined ||
          meaning.field.deniedIn !== undefined),
    );
  }
}

/** How far back, in sentences, a thing is remembered that is named to be taken back. */
const RECENT = 3;

/** Better than anything but a field that was named. */
const SISTER = 6;

/** Words that state what is right: "it was two point four". */
const states = new Set(['is', 'was', 'were', 'be', 'been', 'are']);

/** The things that a phrase names: its subject, or what its values are about. */
function thingsOf(meaning: Meaning): readonly string[] {
  if (meaning.kind === 'subject') return [meaning.subject.id];
  if (!('field' in meaning)) return [];
  return meaning.field.opens === undefined ? meaning.field.about : [meaning.field.opens, ...meaning.field.about];
}

/** A length of time, which a number alone may begin: "for three, no, four weeks". */
function isLength(item: Item): boolean {
  return item.meanings.some(
    (meaning) => meaning.kind === 'form' && /\{(?:duration|frequency)\}/u.test(meaning.form.said.join(' ')),
  );
}

/** Fields of which one replaces another: two kinds of viscoelastic, two antibiotics. */
function familyOf(field: SpokenField): string | undefined {
  return /^(ovd\[|pupil-aid\[|drugs\[(?:intracameral|subconjunctival)|after-care\.drops\[).*\.(?:kind|agent|drug)$/u.exec(
    field.path,
  )?.[1];
}

function sharesField(a: Item, b: Item): boolean {
  const fields = a.meanings.flatMap((meaning) => ('field' in meaning ? [meaning.field] : []));
  return b.meanings.some(
    (meaning) =>
      'field' in meaning &&
      fields.some(
        (field) =>
          field === meaning.field || (familyOf(field) !== undefined && familyOf(field) === familyOf(meaning.field)),
      ),
  );
}
