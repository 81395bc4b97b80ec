import type { SpokenField, SpokenForm, SpokenValue } from '@sideport/schemas/spoken/phrase.ts';
import { accepts, writeAmount, type Claim } from './claims.ts';
import { gapBetween, isPlain, neighbour } from './gaps.ts';
import { polarities, type Polarity } from './polarity.ts';
import type { Amount, Item } from './scan.ts';
import type { AmountOf, Meaning, Table } from './table.ts';
import type { Token } from './tokens.ts';

type Cue = Extract<Meaning, { kind: 'cue' }>['cue'];
type Valued =
  | { readonly field: SpokenField; readonly value: SpokenValue }
  | { readonly field: SpokenField; readonly form: SpokenForm };

/** What binding makes of a dictation: the claims in order, and which islands were used. */
export interface Bound {
  readonly claims: readonly Claim[];
  /** Islands whose words are accounted for. */
  readonly used: ReadonlySet<number>;
}

/** Gives every number and attribute to the field that is being spoken about. */
export function bind(items: readonly Item[], tokens: readonly Token[], table: Table): Bound {
  return new Binder(items, tokens, table).run();
}

interface Scope {
  readonly cue: Cue;
  readonly index: number;
  readonly sentence: number;
}

class Binder {
  readonly #items: readonly Item[];
  readonly #tokens: readonly Token[];
  readonly #table: Table;
  readonly #polarity: ReadonlyMap<number, Polarity>;
  readonly #sentences: readonly number[];
  readonly #claims: Claim[] = [];
  readonly #claimItem = new Map<Claim, number>();
  readonly #used = new Set<number>();
  /** A number before a cue, by the position of the number after it. */
  readonly #held = new Map<number, number>();
  #topic: string | undefined;
  #topicAt = 0;
  #open: { readonly fields: readonly SpokenField[]; readonly index: number } | undefined;
  #scope: Scope | undefined;

  constructor(items: readonly Item[], tokens: readonly Token[], table: Table) {
    this.#items = items;
    this.#tokens = tokens;
    this.#table = table;
    this.#polarity = polarities(items, tokens);
    let sentence = 0;
    const numbers: number[] = [];
    for (const token of tokens) {
      numbers.push(sentence);
      if (token.strength === 'sentence') sentence += 1;
    }
    this.#sentences = numbers;
  }

  run(): Bound {
    this.#holdRestatedNumbers();
    this.#items.forEach((item, index) => this.#take(item, index));
    return { claims: this.#claims, used: this.#used };
  }

  #sentence(index: number): number {
    return this.#sentences[this.#items[index]!.from] ?? 0;
  }

  #take(item: Item, index: number): void {
    if ([...this.#held.values()].includes(index)) return;
    if (item.amount !== undefined) return this.#takeAmount(item, item.amount, index);
    const cue = item.meanings.find((meaning) => meaning.kind === 'cue');
    if (cue !== undefined && this.#isCue(cue.cue, index)) return this.#takeCue(cue.cue, index);
    const valued = item.meanings.flatMap((meaning): Valued[] =>
      meaning.kind === 'value'
        ? [{ field: meaning.field, value: meaning.value }]
        : meaning.kind === 'form'
          ? [{ field: meaning.field, form: meaning.form }]
          : [],
    );
    if (valued.length > 0 && this.#takeValues(item, valued, index)) return;
    const called = item.meanings.flatMap((meaning) => (meaning.kind === 'called' ? [meaning.field] : []));
    if (called.length > 0) return this.#openFields(called, index);
    const subject = item.meanings.find((meaning) => meaning.kind === 'subject');
    if (subject !== undefined) this.#setTopic(subject.subject.id, index);
  }

  #setTopic(topic: string, index: number): void {
    this.#topic = topic;
    this.#topicAt = index;
  }

  #openFields(fields: readonly SpokenField[], index: number): void {
    const about = fields.filter((field) => this.#isAbout(field));
    const chosen = about.length > 0 ? about : fields;
    this.#open = { fields: chosen, index };
    const topic = chosen[0]!.about[0]!;
    if (!chosen.some((field) => this.#isAbout(field))) this.#setTopic(topic, index);
  }

  /** The subject spoken about and those it is a part of. */
  #topics(): readonly string[] {
    return this.#topic === undefined ? [] : this.#withAncestors(this.#topic);
  }

  #withAncestors(topic: string): readonly string[] {
    const within = this.#table.subjects.get(topic)?.within;
    return within === undefined ? [topic] : [topic, ...this.#withAncestors(within)];
  }

  #isAbout(field: SpokenField): boolean {
    return this.#topics().some((topic) => field.about.includes(topic));
  }

  // Numbers

  #takeAmount(item: Item, spoken: Amount, index: number): void {
    const held = this.#held.get(index);
    const before = held === undefined ? undefined : this.#items[held]!;
    const whole: Amount =
      spoken.unit === undefined && before?.amount?.unit !== undefined
        ? { ...spoken, unit: before.amount.unit }
        : spoken;
    const at = this.#followsAt(before ?? item);
    const ranked = this.#table.amounts
      .map((of) => ({ of, score: this.#scoreAmount(of, item, whole, index, at) }))
      .filter(({ score }) => score > 0)
      .sort((a, b) => b.score - a.score);
    const best = ranked[0];
    if (best === undefined) return;
    const rival = ranked.find(({ of }) => of.field !== best.of.field);
    const unsure = rival !== undefined && best.score - rival.score < 0.5;
    if (before !== undefined && held !== undefined) this.#supersedeNumber(before, held, best.of, index);
    this.#claim(index, best.of.field, {
      value: writeAmount(best.of.amount, whole),
      part: partOf(best.of),
      unsure: unsure || best.score <= 1.5,
    });
    if (this.#open?.fields.includes(best.of.field) === true) this.#used.add(this.#open.index);
    if (best.of.field.several !== true) this.#open = undefined;
    if (this.#topic === undefined || best.score <= 1.5) this.#setTopic(best.of.field.about[0]!, index);
  }

  #scoreAmount(of: AmountOf, item: Item, spoken: Amount, index: number, afterAt: boolean): number {
    const scores = [
      this.#openScore(of, item, spoken, index, afterAt),
      this.#topicScore(of, item, spoken, index, afterAt),
      this.#forwardScore(of, item, spoken, index, afterAt),
    ];
    if (this.#isDefault(of, spoken, index) && accepts(of.amount, spoken, { named: true, afterAt })) scores.push(1);
    const best = Math.max(...scores);
    if (best <= 0) return 0;
    const usual = of.amount.usual;
    const scaled =
      spoken.value *
      (spoken.unit === undefined || spoken.unit === of.amount.unit ? 1 : (of.amount.also?.[spoken.unit] ?? 1));
    const likely = usual === undefined ? 0 : scaled >= usual[0] && scaled <= usual[1] ? 0.5 : -1;
    return best + likely;
  }

  #isDefault(of: AmountOf, spoken: Amount, index: number): boolean {
    if (of.amount.byDefault === 'signed')
      return spoken.unit === of.amount.unit || (spoken.signed && spoken.unit === undefined);
    if (of.amount.byDefault !== 'before a position' || (spoken.unit !== undefined && spoken.unit !== of.amount.unit))
      return false;
    const next = this.#items[index + 1];
    return next?.amount?.unit === '°' && this.#followsAt(next) && this.#sentence(index) === this.#sentence(index + 1);
  }

  #openScore(of: AmountOf, item: Item, spoken: Amount, index: number, afterAt: boolean): number {
    if (this.#open === undefined || !this.#open.fields.includes(of.field)) return 0;
    if (!accepts(of.amount, spoken, { named: true, afterAt })) return 0;
    const gap = gapBetween(this.#tokens, this.#items[this.#open.index]!.to, item.from);
    const between = this.#itemsBetween(this.#open.index, index);
    const score = 8 - 2 * gap.sentences - 1.5 * gap.content - 0.5 * between;
    return gap.sentences > 0 && (gap.content > 0 || between > 0) ? 0 : score;
  }

  #topicScore(of: AmountOf, item: Item, spoken: Amount, index: number, afterAt: boolean): number {
    if (!this.#isAbout(of.field) || !accepts(of.amount, spoken, { named: false, afterAt })) return 0;
    const away = this.#sentence(index) - this.#sentence(this.#topicAt);
    const led = this.#ledByWord(item) ? 1.5 : 0;
    const lone = spoken.unit !== undefined && !spoken.adjective ? 0.3 : 0;
    return 4 - away + led + lone - this.#filled(of.field, partOf(of));
  }

  #forwardScore(of: AmountOf, item: Item, spoken: Amount, index: number, afterAt: boolean): number {
    const anchor = this.#anchorAfter(index);
    if (anchor === undefined) return 0;
    const gap = gapBetween(this.#tokens, item.to, this.#items[anchor]!.from);
    if (gap.sentences > 0 || gap.content > 1) return 0;
    const next = this.#items[anchor]!;
    const called = next.meanings.some((meaning) => meaning.kind === 'called' && meaning.field === of.field);
    const subjects = this.#subjectsOf(next);
    const about = of.field.about.some((subject) => subjects.includes(subject));
    if (!called && !about) return 0;
    if (!accepts(of.amount, spoken, { named: called, afterAt })) return 0;
    if (called && this.#hasOwnNumber(anchor)) return 0;
    const adjacent = gap.content === 0 && gap.plain.length === 0 && gap.parts === 0 && anchor === index + 1;
    const closeness = (spoken.adjective ? 1.8 : 0) + (adjacent && spoken.unit === undefined ? 0.5 : 0);
    const usual = next.meanings.some(
      (meaning) =>
        meaning.kind === 'value' &&
        meaning.value.byDefault === true &&
        of.field.about.includes(meaning.field.opens ?? ''),
    )
      ? 0.6
      : 0;
    return (called ? 4 : 3.5) + usual + closeness - 1.5 * gap.content - 0.8 * gap.parts;
  }

  /** Whether a field's name is followed by a number of its own: "four fifty, vacuum three hundred". */
  #hasOwnNumber(anchor: number): boolean {
    const next = neighbour(this.#items, anchor, 1);
    if (next === undefined || this.#items[next]!.amount === undefined) return false;
    const gap = gapBetween(this.#tokens, this.#items[anchor]!.to, this.#items[next]!.from);
    return gap.sentences === 0 && gap.content === 0 && gap.parts === 0 && this.#anchorAfter(next) !== next + 1;
  }

  #followsAt(item: Item): boolean {
    const word = this.#tokens[item.from - 1]?.word ?? '';
    const earlier = this.#tokens[item.from - 2]?.word ?? '';
    return (
      word === 'at' ||
      word === 'on' ||
      ((word === 'the' ||
        word === 'about' ||
        word === 'around' ||
        word === 'um' ||
        word === 'uh' ||
        word === 'er' ||
        word === ',') &&
        (earlier === 'at' || earlier === 'on'))
    );
  }

  /** Whether the words before lead from a subject to its measure: "of", "is", "measuring". */
  #ledByWord(item: Item): boolean {
    return ['at', 'of', 'is', 'was', 'measuring', 'measured', 'on', 'were', 'to'].includes(
      this.#tokens[item.from - 1]?.word ?? '',
    );
  }

  #itemsBetween(from: number, to: number): number {
    return this.#items.slice(from + 1, to).filter((item) => !isPlain(item)).length;
  }

  // Words that name a value

  #takeValues(item: Item, valued: readonly Valued[], index: number): boolean {
    const polarity = this.#polarity.get(index);
    const bound = valued.filter((one) => isBound(one));
    const free = valued.filter((one) => !isBound(one));
    const chosen = this.#chooseBound(item, bound, index);
    const strong = chosen !== undefined && (free.length === 0 || chosen.score >= 3);
    const taken = strong ? [chosen.one] : free;
    if (taken.length === 0) return false;
    for (const one of taken) this.#claimValue(item, one, index, polarity, strong && chosen.unsure);
    const first = taken[0]!.field;
    if (!isBound(taken[0]!) || !this.#isAbout(first) || first.opens !== undefined)
      this.#setTopic(first.opens ?? first.about[0]!, index);
    if (this.#open?.fields.includes(first) === true) {
      this.#used.add(this.#open.index);
      this.#open = undefined;
    }
    return true;
  }

  #chooseBound(
    item: Item,
    bound: readonly Valued[],
    index: number,
  ): { readonly one: Valued; readonly score: number; readonly unsure: boolean } | undefined {
    const ranked = bound
      .map((one) => ({ one, score: this.#scoreBound(item, one, index) }))
      .filter(({ score }) => score > 0)
      .sort((a, b) => b.score - a.score);
    const best = ranked[0];
    if (best === undefined) return undefined;
    const rival = ranked.find(({ one }) => one.field !== best.one.field);
    return { ...best, unsure: best.score < 2 || (rival !== undefined && best.score - rival.score < 0.5) };
  }

  #scoreBound(item: Item, one: Valued, index: number): number {
    const { field } = one;
    let score = 0;
    if (this.#isAbout(field)) {
      const away = this.#sentence(index) - this.#sentence(this.#topicAt);
      const direct = this.#topic !== undefined && field.about.includes(this.#topic) ? 0 : -0.2;
      score = 4 + direct - (field.opens === undefined ? 0.6 : 1.5) * away - this.#filled(field, partOfValue(one));
    }
    if (this.#open?.fields.includes(field) === true) score = Math.max(score, 6);
    const anchor = this.#anchorAfter(index);
    if (
      anchor !== undefined &&
      field.about.some((subject) => this.#subjectsOf(this.#items[anchor]!).includes(subject))
    ) {
      const gap = gapBetween(this.#tokens, item.to, this.#items[anchor]!.from);
      const attributive = this.#isAttributive(item, one) && gap.plain.length === 0 && gap.parts === 0 ? 1.5 : 0;
      if (gap.content <= 1 && gap.sentences === 0)
        score = Math.max(score, 3 + attributive - 0.8 * gap.parts - gap.content);
    }
    if ('value' in one && one.value.byDefault === true) score = Math.max(score, 1);
    if (field.opens !== undefined && this.#nextFits(index, field.opens)) score += 3;
    return score;
  }

  /** Whether an adjective stands before the thing it describes, as "temporal" does and "temporally" does not. */
  #isAttributive(item: Item, one: Valued): boolean {
    return (
      ('form' in one ? item.slots.some((slot) => slot.from === item.from) : true) &&
      !(this.#tokens[item.to - 1]?.word.endsWith('ly') ?? false) &&
      !/centred|complete|intact/u.test(this.#tokens[item.to - 1]?.word ?? '')
    );
  }

  /** Whether what follows can only be said of a subject. */
  #nextFits(index: number, subject: string): boolean {
    const next = neighbour(this.#items, index, 1);
    if (next === undefined) return false;
    const item = this.#items[next]!;
    const gap = gapBetween(this.#tokens, this.#items[index]!.to, item.from);
    if (gap.sentences > 0 || gap.content > 1) return false;
    if (item.amount !== undefined) {
      return this.#table.amounts.some(
        ({ field, amount }) =>
          field.about.includes(subject) && accepts(amount, item.amount!, { named: false, afterAt: false }),
      );
    }
    const within = this.#withAncestors(subject);
    return item.meanings.some(
      (meaning) =>
        (meaning.kind === 'form' && meaning.form.bound === true && meaning.field.about.includes(subject)) ||
        (meaning.kind === 'subject' && within.includes(meaning.subject.id)),
    );
  }

  #claimValue(item: Item, one: Valued, index: number, polarity: Polarity | undefined, unsure: boolean): void {
    const denied = polarity?.sense === 'denied' || ('value' in one && one.value.denies === true);
    const open = polarity?.sense === 'open';
    const words = polarity === undefined ? {} : { from: polarity.from, to: polarity.to };
    if ('form' in one) {
      const text = item.slots[0]?.text ?? '';
      this.#claim(index, one.field, {
        value: (one.form.write ?? '{}').replace('{}', text),
        part: one.form.part ?? '',
        unsure,
        implied: one.form.implied === true,
        ...words,
      });
      for (const [path, value] of one.form.also ?? []) this.#claimBesides(index, path, value);
      return;
    }
    const { field, value } = one;
    if (polarity?.sense === 'denied' && value.denied === undefined) {
      this.#claim(index, field, {
        value: value.value,
        part: value.part ?? '',
        unsure,
        denied: true,
        open: true,
        ...words,
      });
      return;
    }
    polarity?.by.forEach((by) => this.#used.add(by));
    const stated = denied && value.denies !== true ? (value.denied ?? value.value) : value.value;
    this.#claim(index, field, {
      value: value.as?.[1] ?? stated,
      part: value.part ?? '',
      unsure,
      denied,
      open,
      implied: value.implied === true,
      ...(value.as === undefined ? {} : { path: value.as[0] }),
      ...(value.orElse === undefined ? {} : { orElse: value.orElse }),
      ...words,
    });
    if (!denied) for (const [path, other] of value.also ?? []) this.#claimBesides(index, path, other);
  }

  #claimBesides(index: number, path: string, value: string): void {
    const field = this.#table.fields.get(path) ?? { path, about: [] };
    this.#claim(index, field, {
      value,
      part: field.values?.find((known) => known.value === value)?.part ?? '',
      unsure: false,
      besides: true,
    });
  }

  // What comes next

  /** The next island that opens a subject, with only attributes and numbers before it. */
  #anchorAfter(index: number): number | undefined {
    for (let at = index + 1; at < this.#items.length; at += 1) {
      const gap = gapBetween(this.#tokens, this.#items[at - 1]!.to, this.#items[at]!.from);
      if (gap.sentences > 0) return undefined;
      const item = this.#items[at]!;
      if (isPlain(item)) continue;
      if (item.meanings.some(({ kind }) => kind === 'cue' || kind === 'side' || kind === 'opaque')) return undefined;
      if (
        item.meanings.some(
          (meaning) => meaning.kind === 'subject' || meaning.kind === 'called' || isFree(meaning) || opens(meaning),
        )
      )
        return at;
      if (item.meanings.some(({ kind }) => kind === 'denial' || kind === 'doubt')) return undefined;
    }
    return undefined;
  }

  #subjectsOf(item: Item): readonly string[] {
    return item.meanings.flatMap((meaning) => {
      if (meaning.kind === 'subject') return this.#withAncestors(meaning.subject.id);
      if (meaning.kind === 'called') return meaning.field.about;
      if (meaning.kind === 'value' && opens(meaning)) return [meaning.field.opens!];
      return isFree(meaning) ? this.#withAncestors(meaning.field.opens ?? meaning.field.about[0]!) : [];
    });
  }

  /** How much a value already given counts against another, unless it is being corrected. */
  #filled(field: SpokenField, part: string): number {
    if (field.several === true || this.#scope !== undefined) return 0;
    return this.#claims.some(
      (claim) =>
        claim.field === field &&
        claim.part === part &&
        !claim.superseded &&
        (this.#claimItem.get(claim) ?? 0) >= this.#topicAt - 3,
    )
      ? 3
      : 0;
  }

  // Claims and corrections

  #claim(
    index: number,
    field: SpokenField,
    given: {
      readonly value: string;
      readonly part: string;
      readonly unsure: boolean;
      readonly path?: string;
      readonly orElse?: string;
      readonly denied?: boolean;
      readonly open?: boolean;
      readonly implied?: boolean;
      readonly besides?: boolean;
      readonly from?: number;
      readonly to?: number;
    },
  ): void {
    const item = this.#items[index]!;
    const from = given.from ?? item.from;
    const to = given.to ?? item.to;
    const corrects = this.#inScope(index);
    const claim: Claim = {
      field,
      path: given.path ?? (given.denied === true && field.deniedIn !== undefined ? field.deniedIn : field.path),
      value: given.value,
      part: given.part,
      denied: given.denied ?? false,
      start: this.#tokens[from]!.start,
      end: this.#tokens[to - 1]!.end,
      from,
      to,
      heard: item.heard,
      implied: given.implied ?? false,
      unsure: given.unsure,
      open: given.open ?? false,
      besides: given.besides ?? false,
      ...(given.orElse === undefined ? {} : { orElse: given.orElse }),
      corrects,
      superseded: false,
    };
    if (corrects) this.#supersede(claim, index);
    this.#claims.push(claim);
    this.#claimItem.set(claim, index);
    this.#used.add(index);
    if (this.#scope?.cue.strength === 'weak') this.#scope = undefined;
  }

  #inScope(index: number): boolean {
    if (this.#scope === undefined) return false;
    const { cue, sentence } = this.#scope;
    if (cue.strength === 'weak') return true;
    if (this.#sentence(index) <= sentence) return true;
    this.#scope = undefined;
    return false;
  }

  /** Withdraws what a claim corrects: the last value of its field, or the whole last list when a list follows. */
  #supersede(claim: Claim, index: number): void {
    const scopeAt = this.#scope?.index ?? index;
    const earlier = this.#claims.filter(
      (old) =>
        old.field === claim.field &&
        old.part === claim.part &&
        !old.superseded &&
        (this.#claimItem.get(old) ?? 0) < scopeAt,
    );
    const last = earlier.at(-1);
    if (last === undefined) return;
    const rest =
      claim.field.several === true && this.#runFollows(index)
        ? earlier.filter((old) => old.from >= last.from - 6)
        : earlier.filter((old) => claim.field.several !== true || old === last);
    for (const old of rest) old.superseded = true;
    this.#used.add(scopeAt);
  }

  #runFollows(index: number): boolean {
    const next = neighbour(this.#items, index, 1);
    if (next === undefined || this.#items[next]!.amount === undefined) return false;
    return gapBetween(this.#tokens, this.#items[index]!.to, this.#items[next]!.from).plain.includes('and');
  }

  #supersedeNumber(before: Item, held: number, of: AmountOf, index: number): void {
    const wholeList = of.field.several === true && this.#runFollows(index);
    for (const old of this.#claims)
      if (wholeList && old.field === of.field && this.#sentences[old.from] === this.#sentence(index))
        old.superseded = true;
    const { amount } = before;
    if (amount === undefined) return;
    const scope = this.#scope;
    this.#scope = undefined;
    this.#claim(held, of.field, { value: writeAmount(of.amount, amount), part: partOf(of), unsure: false });
    this.#claims.at(-1)!.superseded = true;
    this.#scope = scope;
  }

  /** A number, a word of correction, another number that measures the same: the second stands for the first. */
  #holdRestatedNumbers(): void {
    this.#items.forEach((item, index) => {
      if (!item.meanings.some(({ kind }) => kind === 'cue')) return;
      const before = this.#acrossCues(index, -1);
      const after = this.#acrossCues(index, 1);
      if (before === undefined || after === undefined || this.#held.has(after)) return;
      const [old, now] = [this.#items[before]!.amount, this.#items[after]!.amount];
      if (old === undefined || now === undefined) return;
      const sameUnit = old.unit === undefined || now.unit === undefined || old.unit === now.unit;
      if (sameUnit && !this.#isNameBetween(before, after)) this.#held.set(after, before);
    });
  }

  #isNameBetween(before: number, after: number): boolean {
    return this.#items
      .slice(before + 1, after)
      .some(({ meanings }) => meanings.some(({ kind }) => kind === 'subject' || kind === 'called'));
  }

  #acrossCues(index: number, step: 1 | -1): number | undefined {
    let at: number | undefined = index;
    for (;;) {
      const next: number | undefined = neighbour(this.#items, at, step);
      if (next === undefined) return undefined;
      const [left, right] = step === 1 ? [at, next] : [next, at];
      const gap = gapBetween(this.#tokens, this.#items[left]!.to, this.#items[right]!.from);
      if (gap.content > 0 || (step === -1 && gap.sentences > 0)) return undefined;
      if (this.#items[next]!.meanings.some(({ kind }) => kind === 'cue')) at = next;
      else return next;
    }
  }

  /** "No" and the like are words of correction only between two values of one kind. */
  #isCue(cue: Cue, index: number): boolean {
    if (cue.strength === 'strong') return true;
    const before = this.#acrossCues(index, -1);
    const after = this.#acrossCues(index, 1);
    if (before === undefined || after === undefined) return false;
    if (this.#held.get(after) === before) return true;
    return this.#sharesField(this.#items[before]!, this.#items[after]!) && !this.#isDirectDenial(index, after);
  }

  #isDirectDenial(cue: number, after: number): boolean {
    const polarity = this.#polarity.get(after);
    const gap = gapBetween(this.#tokens, this.#items[cue]!.to, this.#items[after]!.from);
    return (
      polarity?.sense === 'denied' &&
      polarity.by.includes(cue) &&
      gap.parts === 0 &&
      this.#items[after]!.meanings.some(
        (meaning) =>
          meaning.kind === 'value' && (meaning.value.denied !== undefined || meaning.field.deniedIn !== undefined),
      )
    );
  }

  #sharesField(a: Item, b: Item): boolean {
    const fields = new Set(a.meanings.flatMap((meaning) => ('field' in meaning ? [meaning.field] : [])));
    return b.meanings.some((meaning) => 'field' in meaning && fields.has(meaning.field));
  }

  #takeCue(cue: Cue, index: number): void {
    this.#used.add(index);
    if (this.#scope !== undefined && this.#scope.cue.strength === 'strong' && cue.strength === 'weak') return;
    const next = neighbour(this.#items, index, 1);
    const endsSentence =
      next !== undefined && gapBetween(this.#tokens, this.#items[index]!.to, this.#items[next]!.from).sentences > 0;
    this.#scope = { cue, index, sentence: this.#sentence(index) + (endsSentence ? 1 : 0) };
    if (cue.withdraws === true) this.#withdrawLast(index);
  }

  #withdrawLast(index: number): void {
    const before = this.#acrossCues(index, -1);
    if (before === undefined) return;
    for (const claim of this.#claims) if (this.#claimItem.get(claim) === before) claim.superseded = true;
  }
}

function isBound(one: Valued): boolean {
  return ('value' in one ? one.value.bound : one.form.bound) === true;
}

function isFree(meaning: Meaning): meaning is Extract<Meaning, { kind: 'value' | 'form' }> {
  return (
    (meaning.kind === 'value' && meaning.value.bound !== true) ||
    (meaning.kind === 'form' && meaning.form.bound !== true)
  );
}

/** Whether a word that fits several fields opens a subject of its own in each: the name of a drug. */
function opens(meaning: Meaning): boolean {
  return meaning.kind === 'value' && meaning.value.bound === true && meaning.field.opens !== undefined;
}

/** Numbers of different units in one field are parts of one value: milligrams in millilitres, degrees and clock hours. */
function partOf({ field, amount }: AmountOf): string {
  return (field.amounts?.length ?? 0) > 1 ? amount.unit : '';
}

function partOfValue(one: Valued): string {
  return ('value' in one ? one.value.part : one.form.part) ?? '';
}
