import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import { accepts, writeAmount, type Claim } from './claims.ts';
import { Context } from './context.ts';
import { Corrections } from './corrections.ts';
import { ElsewhereTold } from './elsewhere.ts';
import { completedNumber } from './partial-number.ts';
import { polarities, type Polarity } from './polarity.ts';
import { guessed, partOf, rankAmounts, type RankedField } from './rank-amounts.ts';
import { chooseBound, isBound, partOfValue, valuedOf, type Valued } from './rank-words.ts';
import type { Item } from './scan.ts';
import type { Amount } from './spoken-amounts.ts';
import type { SlotReading } from './slots.ts';
import type { AmountOf, Called, Table } from './table.ts';
import type { Token } from './tokens.ts';

/** What binding makes of a dictation: the claims in order, and the positions of the islands that were used. */
export interface Bound {
  readonly claims: readonly Claim[];
  readonly used: ReadonlySet<number>;
}

/** Gives every number and attribute to the field that is being spoken about. */
export function bind(items: readonly Item[], tokens: readonly Token[], table: Table): Bound {
  return new Binder(items, tokens, table).run();
}

/** Words that sound like a number. */
const misheardNumbers = new Set(['to', 'too', 'for', 'fore', 'won', 'ate']);

interface Given {
  readonly value: string;
  readonly part: string;
  readonly unsure?: boolean;
  readonly heard?: boolean;
  readonly path?: string;
  readonly orElse?: string;
  readonly denied?: boolean;
  readonly open?: boolean;
  readonly implied?: boolean;
  readonly besides?: boolean;
  readonly from?: number;
  readonly to?: number;
}

class Binder {
  readonly #context: Context;
  readonly #polarity: ReadonlyMap<number, Polarity>;
  readonly #corrections: Corrections;
  readonly #elsewhere: ElsewhereTold;
  readonly #used = new Set<number>();

  constructor(items: readonly Item[], tokens: readonly Token[], table: Table) {
    this.#context = new Context(items, tokens, table);
    this.#polarity = polarities(items, tokens);
    this.#elsewhere = new ElsewhereTold(items, tokens);
    this.#corrections = new Corrections(this.#context, this.#polarity);
  }

  run(): Bound {
    this.#context.items.forEach((item, index) => this.#take(item, index));
    this.#corrections.finish();
    return { claims: this.#context.claims.map(({ claim }) => claim), used: this.#used };
  }

  #take(item: Item, index: number): void {
    if (this.#corrections.isReplaced(index)) return;
    this.#context.correcting = this.#corrections.reaches(index);
    if (item.amount !== undefined) {
      this.#takeAmount(item, item.amount, index);
      return;
    }
    const cue = item.meanings.find((meaning) => meaning.kind === 'cue');
    if (cue !== undefined && this.#corrections.corrects(cue.cue, index)) {
      for (const used of this.#corrections.begin(cue.cue, index)) this.#used.add(used);
      return;
    }
    if (this.#takeValues(item, item.meanings.flatMap(valuedOf), index)) return;
    const called = item.meanings.filter((meaning) => meaning.kind === 'called');
    if (called.length > 0) {
      this.#openFields(called, index);
      return;
    }
    const subject = item.meanings.find((meaning) => meaning.kind === 'subject');
    if (subject !== undefined && !this.#context.isPartOf(subject.subject.id, index))
      this.#context.setTopic(subject.subject.id, index);
  }

  #openFields(called: readonly Called[], index: number): void {
    const possible = called.filter((one) => this.#context.canBeNamed(one, index)).map(({ field }) => field);
    const about = possible.filter((field) => this.#context.isAbout(field));
    const chosen = about.length > 0 ? about : possible;
    if (chosen.length === 0) return;
    this.#context.open = { fields: chosen, index };
    if (about.length === 0) this.#context.setTopic(chosen[0]!.about[0]!, index);
  }

  // Numbers

  #takeAmount(item: Item, spoken: Amount, index: number): void {
    const replaced = this.#corrections.replacedBy(index);
    const before = replaced === undefined ? undefined : this.#context.items[replaced];
    const unit = spoken.unit ?? before?.amount?.unit;
    const completed = before?.amount === undefined ? undefined : completedNumber(before.amount, spoken);
    const whole = { ...spoken, ...completed, unit };
    const ranked = rankAmounts(this.#context, whole, index, replaced);
    const best = this.#corrections.sister(whole, index) ?? this.#doubled(whole, index, ranked[0]) ?? ranked[0];
    if (best === undefined) {
      this.#doubtCutOff(spoken, index);
      return;
    }
    const rival = ranked.find(({ of }) => of.field !== best.of.field);
    const guess = best.score <= guessed;
    const unsure =
      guess ||
      completed !== undefined ||
      this.#maybeDigit(item, spoken) ||
      this.#maybeCount(index, spoken, best.of.field) ||
      this.#maybeSecond(item) ||
      (rival !== undefined && best.score - rival.score < 0.5);
    if (before?.amount !== undefined && replaced !== undefined)
      this.#supersedeNumber(before.amount, replaced, best.of, index);
    this.#claim(index, best.of.field, {
      value: writeAmount(best.of.amount, whole),
      part: partOf(best.of),
      unsure,
      heard: best.heard,
    });
    this.#close(best.of.field);
    if (this.#context.topic === undefined || guess) this.#context.setTopic(best.of.field.about[0]!, index);
  }

  /** "Vacuum to fifty" may be a misheard "two fifty". */
  #maybeDigit(item: Item, spoken: Amount): boolean {
    const { open, items } = this.#context;
    const word = this.#context.wordBefore(item);
    const right = open !== undefined && items[open.index]!.to >= item.from - 1;
    return spoken.unit === undefined && right && spoken.value >= 10 && spoken.value < 100 && misheardNumbers.has(word);
  }

  /** "Flow thirty. Five bottle height ninety": a digit that belongs to nothing may have been cut off the number before it. */
  #doubtCutOff({ value, unit }: Amount, index: number): void {
    const before = this.#context.items[index - 1]?.amount;
    if (before === undefined || before.unit !== undefined || unit !== undefined || value >= 10) return;
    const gap = this.#context.gap(index - 1, index);
    if (before.value % 10 !== 0 || gap.content > 0 || gap.plain.length > 0) return;
    for (const { claim, index: at } of this.#context.claims) if (at === index - 1) claim.open = true;
  }

  /** "Phaco time forty, forty two seconds": two numbers for one field, of which neither is clearly meant. */
  #doubled(amount: Amount, index: number, best: RankedField | undefined): RankedField | undefined {
    const before = this.#context.items[index - 1];
    if (before?.amount === undefined || before.amount.unit !== undefined || (best?.score ?? 0) > 3) return undefined;
    const gap = this.#context.gap(index - 1, index);
    if (gap.content > 0 || gap.plain.length > 0 || gap.sentences > 0 || gap.parts !== 1) return undefined;
    const claim = this.#context.claims.find((entry) => entry.index === index - 1)?.claim;
    if (claim === undefined || claim.field.several === true) return undefined;
    const of = (this.#context.table.amountsIn.get(amount.unit ?? '') ?? []).find(
      (one) => one.field === claim.field && accepts(one.amount, amount, { named: true, afterAt: false }),
    );
    return of === undefined ? undefined : { of, score: 4, heard: false };
  }

  /** "At to and eleven o'clock": a number before this one may have been misheard. */
  #maybeSecond(item: Item): boolean {
    return this.#context.wordBefore(item) === 'and' && misheardNumbers.has(this.#context.wordBefore(item, 2));
  }

  /** "Side ports, two" may say how many there are. */
  #maybeCount(index: number, { unit, value }: Amount, field: SpokenField): boolean {
    if (unit !== undefined || value > 4 || field.path !== 'incisions[side-port].at') return false;
    const next = this.#context.next(index);
    return next === undefined || this.#context.gap(index, next).sentences > 0;
  }

  /** A field whose name was said has its value. */
  #close(field: SpokenField): void {
    const { open } = this.#context;
    if (open !== undefined && this.#context.isOpen(field)) this.#used.add(open.index);
    if (field.several !== true) this.#context.open = undefined;
  }

  #supersedeNumber(old: Amount, replaced: number, of: AmountOf, index: number): void {
    const { claims } = this.#context;
    if (of.field.several === true && this.#corrections.runFollows(index)) {
      const sentence = this.#context.sentence(index);
      for (const { claim, index: at } of claims)
        if (claim.field === of.field && this.#context.sentence(at) === sentence) claim.superseded = true;
    }
    this.#push(replaced, of.field, { value: writeAmount(of.amount, old), part: partOf(of) }, false);
    claims.at(-1)!.claim.superseded = true;
  }

  // Words

  #takeValues(item: Item, valued: readonly Valued[], index: number): boolean {
    const free = valued.filter((one) => !isBound(one));
    const chosen = chooseBound(this.#context, item, valued.filter(isBound), index);
    const bound = chosen !== undefined && (free.length === 0 || chosen.score >= 3);
    const taken = bound ? [chosen.one] : free;
    const [first] = taken;
    if (first === undefined) return false;
    for (const one of taken)
      this.#claimValue(item, one, index, bound ? { unsure: chosen.unsure, heard: chosen.heard } : {});
    const { field } = first;
    if (!isBound(first) || !this.#context.isAbout(field) || field.opens !== undefined)
      this.#context.setTopic(field.opens ?? field.about[0]!, index);
    if (this.#context.isOpen(field)) this.#close(field);
    return true;
  }

  #claimValue(
    item: Item,
    one: Valued,
    index: number,
    how: { readonly unsure?: boolean; readonly heard?: boolean },
  ): void {
    const polarity = this.#polarity.get(index);
    const common = {
      ...how,
      part: partOfValue(one),
      ...(polarity === undefined ? {} : { from: polarity.from, to: polarity.to }),
    };
    if ('form' in one) {
      const { form, field } = one;
      const write = (slot: SlotReading | undefined): string => (form.write ?? '{}').replace('{}', slot?.text ?? '');
      if (form.corrected === true) this.#pushWithdrawn(index, field, write(item.slots[0]), item.slots[0]!);
      this.#claim(index, field, { ...common, value: write(item.slots.at(-1)), implied: form.implied === true });
      this.#claimBesides(index, form.also, field.critical === true);
      return;
    }
    const { field, value } = one;
    if (polarity?.sense === 'denied' && this.#corrections.takesBack(field, value.value, index)) {
      this.#used.add(index);
      for (const by of polarity.by) this.#used.add(by);
      return;
    }
    const deniedAs = polarity?.sense === 'denied' ? value.deniedAs : undefined;
    if (polarity?.sense === 'denied' && value.denied === undefined && deniedAs === undefined) {
      this.#claim(index, field, { ...common, value: value.value, denied: true, open: true });
      return;
    }
    for (const by of polarity?.by ?? []) this.#used.add(by);
    const denied = polarity?.sense === 'denied' || value.denies === true;
    const stated = polarity?.sense === 'denied' ? (value.denied ?? value.value) : value.value;
    this.#claim(index, field, {
      ...common,
      value: deniedAs?.[1] ?? value.as?.[1] ?? stated,
      denied,
      open: polarity?.sense === 'open',
      implied: value.implied === true,
      ...pathOf(deniedAs ?? value.as),
      ...(value.orElse === undefined ? {} : { orElse: value.orElse }),
    });
    if (!denied) this.#claimBesides(index, value.also, field.critical === true);
  }

  #pushWithdrawn(index: number, field: SpokenField, value: string, slot: SlotReading): void {
    this.#push(index, field, { value, part: '', from: slot.from, to: slot.end }, false);
    this.#context.claims.at(-1)!.claim.superseded = true;
  }

  #claimBesides(index: number, also: readonly (readonly [string, string])[] | undefined, implied: boolean): void {
    for (const [path, value] of also ?? []) {
      const field = this.#context.table.fields.get(path) ?? { path, about: [] };
      const part = field.values?.find((known) => known.value === value)?.part ?? '';
      this.#claim(index, field, { value, part, besides: true, implied });
    }
  }

  // Claims

  #claim(index: number, field: SpokenField, given: Given): void {
    this.#push(index, field, given, this.#corrections.reaches(index));
    if (given.besides !== true) this.#corrections.afterClaim();
  }

  #push(index: number, field: SpokenField, given: Given, corrects: boolean): void {
    const item = this.#context.items[index]!;
    const from = given.from ?? item.from;
    const to = given.to ?? item.to;
    const { tokens } = this.#context;
    const denied = given.denied ?? false;
    const claim: Claim = {
      field,
      path: given.path ?? (denied && field.deniedIn !== undefined ? field.deniedIn : field.path),
      value: given.value,
      part: given.part,
      denied,
      start: tokens[from]!.start,
      end: tokens[to - 1]!.end,
      from,
      to,
      heard: item.heard || given.heard === true,
      guessed: item.guessed === true,
      implied: given.implied ?? false,
      unsure: given.unsure ?? false,
      open: given.open === true || this.#elsewhere.covers(item.from, field),
      besides: given.besides ?? false,
      ...(given.orElse === undefined ? {} : { orElse: given.orElse }),
      superseded: false,
    };
    if (corrects) this.#corrections.supersede(claim, index);
    this.#context.claims.push({ claim, index });
    this.#used.add(index);
  }
}

function pathOf(as: readonly [string, string] | undefined): { readonly path?: string } {
  return as === undefined ? {} : { path: as[0] };
}
