import type { Cue } from '@sideport/schemas/spoken/cues.ts';
import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import { accepts, type Claim } from './claims.ts';
import type { Context } from './context.ts';
import { correctsBackwards } from './backwards.ts';
import { entryOf, familyOf, sharesField } from './families.ts';
import { HeldNumbers } from './held-numbers.ts';
import { across, sentenceBefore, withdraw } from './islands.ts';
import type { Polarity } from './polarity.ts';
import type { RankedField } from './rank-amounts.ts';
import type { Item } from './scan.ts';
import type { Amount } from './spoken-amounts.ts';
import { denies, named, recalled, takesBack } from './taking-back.ts';

/** How far a word of correction reaches. */
interface Scope {
  readonly cue: Cue;
  readonly index: number;
  readonly sentence: number;
  /** The island before the word. */
  readonly before: number | undefined;
}

/** Words of correction and what they reach. */
export class Corrections {
  readonly #context: Context;
  readonly #polarity: ReadonlyMap<number, Polarity>;
  readonly #held: HeldNumbers;
  /** Islands that only say what is taken back. */
  readonly #taken = new Set<number>();
  #scope: Scope | undefined;

  constructor(context: Context, polarity: ReadonlyMap<number, Polarity>) {
    this.#context = context;
    this.#polarity = polarity;
    this.#held = new HeldNumbers(context);
  }

  /** To be called when the dictation is at its end. */
  finish(): void {
    this.#close();
  }

  /** The number that the number at a position replaces. */
  replacedBy(index: number): number | undefined {
    return this.#held.replacedBy(index);
  }

  /** Whether an island waits for the one that replaces it, or was taken with the words of correction. */
  isReplaced(index: number): boolean {
    return this.#held.isReplaced(index) || this.#taken.has(index);
  }

  /** "Target plano, make that minus a half": the field of the value before the word, where a number can stand in it. */
  sister(amount: Amount, index: number): RankedField | undefined {
    if (this.#scope === undefined || across(this.#context, this.#scope.index, 1) !== index) return undefined;
    const before = across(this.#context, this.#scope.index, -1);
    if (before === undefined || this.#context.items[before]!.amount !== undefined) return undefined;
    const fields = this.#context.claims.filter((entry) => entry.index === before).map(({ claim }) => claim.field);
    const of = (this.#context.table.amountsIn.get(amount.unit ?? '') ?? []).find(
      (one) => fields.includes(one.field) && accepts(one.amount, amount, { named: true, afterAt: false }),
    );
    return of === undefined ? undefined : { of, score: SISTER, heard: false };
  }

  /** Whether a word corrects here: weak ones only between two values of one kind. */
  corrects(cue: Cue, index: number): boolean {
    if (cue.names === true) return named(this.#context, index) !== undefined;
    if (cue.recalls === true) return recalled(this.#context, index) !== undefined;
    if (cue.strength === 'strong') return true;
    const [before, after] = [across(this.#context, index, -1), across(this.#context, index, 1)];
    if (before === undefined || after === undefined) return false;
    if (this.#held.replacedBy(after) === before) return true;
    const { items } = this.#context;
    return (
      (isLength(items[after]!) && items[before]!.amount !== undefined) ||
      (sharesField(items[before]!, items[after]!) && !this.#isDirectDenial(index, after))
    );
  }

  /** A value denied beside another of its kind takes back what was said before. */
  takesBack(field: SpokenField, value: string, index: number): boolean {
    return takesBack(this.#context, field, value, index);
  }

  /** Opens the reach of a word of correction: to the end of its sentence, of the next one when it ends its own. */
  begin(cue: Cue, index: number): readonly number[] {
    if (cue.names === true) return this.#retract(index);
    if (cue.recalls === true) return this.#recall(cue, index);
    if (this.#scope?.cue.strength === 'strong' && cue.strength === 'weak') return [index];
    if (denies(this.#context, index) || correctsBackwards(this.#context, this.#held, cue, index)) return [index];
    this.#close();
    const next = this.#context.next(index);
    const ends = next !== undefined && this.#context.gap(index, next).sentences > 0;
    const before =
      across(this.#context, index, -1) ?? (cue.withdraws === true ? sentenceBefore(this.#context, index) : undefined);
    this.#scope = { cue, index, before, sentence: this.#context.sentence(index) + (ends ? 1 : 0) };
    if (cue.withdraws === true && before !== undefined) withdraw(this.#context, ({ index: at }) => at === before);
    const after = across(this.#context, index, 1);
    const shortened =
      before !== undefined &&
      after !== undefined &&
      isLength(this.#context.items[after]!) &&
      this.#context.items[before]!.amount !== undefined;
    return shortened ? [index, before] : [index];
  }

  /**
   * Ends the reach of a word of correction. When nothing took the place of what stood before a strong one, that is in
   * doubt: "iris prolapse, none, no, that is wrong, there was a brief one".
   */
  #close(): void {
    const scope = this.#scope;
    this.#scope = undefined;
    if (scope?.before === undefined || scope.cue.strength === 'weak') return;
    const { from, to } = this.#context.items[scope.before]!;
    const doubted = this.#context.claims.filter(
      ({ index, claim }) => index === scope.before || (claim.from <= from && to <= claim.to),
    );
    if (doubted.some(({ claim }) => claim.superseded)) return;
    for (const { claim } of doubted) claim.open = true;
  }

  #retract(index: number): readonly number[] {
    const found = named(this.#context, index);
    if (found === undefined) return [];
    const taken = new Set(found.claims);
    withdraw(this.#context, ({ claim }) => taken.has(claim));
    // The name of a field is left to the value that follows it.
    if (found.isField) return [index];
    this.#taken.add(found.at);
    return [index, found.at];
  }

  #recall(cue: Cue, index: number): readonly number[] {
    const found = recalled(this.#context, index);
    if (found === undefined) return [];
    const { quoted, right } = found;
    if (this.#context.items[quoted]!.amount === undefined) this.#taken.add(quoted);
    else this.#held.replace(quoted, right);
    this.#close();
    this.#scope = { cue, index, before: undefined, sentence: this.#context.sentence(right) };
    return [index, quoted];
  }

  /** Whether a value at a position corrects an earlier one. */
  reaches(index: number): boolean {
    if (this.#scope === undefined) return false;
    if (this.#scope.cue.strength === 'weak' || this.#context.sentence(index) <= this.#scope.sentence) return true;
    this.#close();
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
    this.#supersedeFamily(claim, scopeAt);
    if (last === undefined) return;
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
    const before = across(this.#context, scopeAt, -1);
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
      const entry = entryOf(old.field);
      withdraw(this.#context, ({ claim: other }) => other.path.startsWith(entry));
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

/** Better than anything but a field that was named. */
const SISTER = 6;

/** A length of time, which a number alone may begin: "for three, no, four weeks". */
function isLength(item: Item): boolean {
  return item.meanings.some(
    (meaning) => meaning.kind === 'form' && /\{(?:duration|frequency)\}/u.test(meaning.form.said.join(' ')),
  );
}
