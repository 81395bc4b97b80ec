import { plainWords } from '@sideport/schemas/spoken/plain-words.ts';
import { readPattern, type PatternTree } from './pattern.ts';
import { hesitations } from './phrases.ts';
import type { Item } from './scan.ts';
import { soundOf } from './sounds.ts';
import { table, type Meaning, type Table } from './table.ts';
import { tokensOf, type Token } from './tokens.ts';

/**
 * Words that nothing explains but that sound like a phrase of the table become islands marked as heard, which are
 * never more than proposals. Sides, denials, corrections and numbers are never guessed.
 */
export function nearMisses(items: readonly Item[], tokens: readonly Token[], table: Table): readonly Item[] {
  const covered = new Set(
    items.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, ahead) => from + ahead)),
  );
  const found: Item[] = [];
  for (let from = 0; from < tokens.length;) {
    const item = bestAt(tokens, from, covered, table);
    if (item !== undefined) found.push(item);
    from = item === undefined ? from + 1 : item.to;
  }
  return [...items, ...found].toSorted((a, b) => a.from - b.from);
}

/** The most words taken together. */
const longest = 7;
/** Sounds with fewer consonants fit too many words. */
const shortest = 5;
/** Sounds with as many consonants may differ in one. */
const longSound = 7;

function bestAt(tokens: readonly Token[], from: number, covered: ReadonlySet<number>, table: Table): Item | undefined {
  const words: string[] = [];
  let best: Item | undefined;
  for (let at = from; at < tokens.length && at < from + longest; at += 1) {
    const token = tokens[at]!;
    if (token.kind !== 'word' || covered.has(at) || token.word === '-' || token.word === '/') break;
    if (hesitations.has(token.word)) continue;
    words.push(token.word);
    if (plainWords.has(token.word)) {
      if (words.length === 1) break;
      continue;
    }
    const meanings = guess(words, table);
    if (meanings !== undefined) {
      best = {
        from,
        to: at + 1,
        start: tokens[from]!.start,
        end: token.end,
        meanings,
        slots: [],
        heard: true,
        guessed: true,
      };
    }
  }
  return best;
}

function guess(words: readonly string[], table: Table): readonly Meaning[] | undefined {
  const sound = soundOf(words);
  if (sound.length < shortest) return undefined;
  const letters = words.join('').length;
  const phrase = soundIndex().find(sound, letters);
  if (phrase === undefined) return undefined;
  const spoken = tokensOf(phrase);
  const whole = table.phrases
    .at(spoken, 0, () => [])
    .find(({ to, slots }) => to === spoken.length && slots.length === 0);
  const meanings = whole?.meanings.filter(guessable);
  return meanings === undefined || meanings.length === 0 ? undefined : meanings;
}

function guessable(meaning: Meaning): boolean {
  if ('field' in meaning && (meaning.field.critical === true || meaning.field.deniedIn !== undefined))
    return meaning.kind === 'called';
  if (meaning.kind === 'value')
    return meaning.value.denies !== true && !/^(?:none|no|\d.*)$/u.test(meaning.value.value);
  return meaning.kind === 'subject' || meaning.kind === 'called';
}

/** Phrases by their sound, and by their sound with one consonant missing. */
class SoundIndex {
  readonly #bySound = new Map<string, string[]>();
  readonly #byNearSound = new Map<string, string[]>();

  constructor(phrases: Iterable<string>) {
    for (const phrase of new Set(phrases)) {
      const sound = soundOf(phrase.split(' '));
      if (sound.length < shortest) continue;
      add(this.#bySound, sound, phrase);
      if (sound.length >= longSound)
        for (const shorter of new Set(without(sound))) add(this.#byNearSound, shorter, phrase);
    }
  }

  /** The phrase of that sound, or of nearly that sound when it is long; of about as many letters. */
  find(sound: string, letters: number): string | undefined {
    const alike = (phrase: string): boolean =>
      Math.abs(phrase.replace(/ /gu, '').length - letters) <= Math.max(2, letters / 3);
    const exact = this.#bySound.get(sound)?.find(alike);
    if (exact !== undefined || sound.length < longSound) return exact;
    const near = [
      ...(this.#byNearSound.get(sound) ?? []),
      ...without(sound).flatMap((shorter) => [
        ...(this.#bySound.get(shorter) ?? []),
        ...(this.#byNearSound.get(shorter) ?? []),
      ]),
    ];
    return near.find(alike);
  }
}

function add(index: Map<string, string[]>, key: string, phrase: string): void {
  const known = index.get(key);
  if (known === undefined) index.set(key, [phrase]);
  else known.push(phrase);
}

function without(sound: string): readonly string[] {
  return Array.from(sound, (_, at) => sound.slice(0, at) + sound.slice(at + 1));
}

let index: SoundIndex | undefined;

function soundIndex(): SoundIndex {
  index ??= new SoundIndex(guessablePhrases());
  return index;
}

/** The shorter forms of every name and value in the table. */
function* guessablePhrases(): Generator<string> {
  for (const { subjects, fields } of table().sections) {
    for (const { named } of subjects) yield* formsOf(named);
    for (const { called, values } of fields) {
      yield* formsOf(called);
      for (const value of values ?? []) if (value.denies !== true) yield* formsOf(value.said);
    }
  }
}

const mostForms = 12;

function* formsOf(patterns: readonly string[] | undefined): Generator<string> {
  for (const pattern of patterns ?? []) {
    for (const words of forms(readPattern(pattern)))
      if (words !== undefined && words.length > 0 && words.length <= 5) yield words.join(' ');
  }
}

/** The first forms of a pattern that hold no slot, optional words left out first. */
function forms(tree: PatternTree): readonly (readonly string[])[] {
  if (tree.kind === 'word') return [[tree.word]];
  if (tree.kind === 'slot') return [];
  if (tree.kind === 'either') return tree.parts.flatMap(forms).slice(0, mostForms);
  let so: readonly (readonly string[])[] = [[]];
  for (const part of tree.parts) {
    const optional =
      part.kind === 'either' && part.parts.some((one) => one.kind === 'sequence' && one.parts.length === 0);
    if (!optional) so = so.flatMap((start) => forms(part).map((end) => [...start, ...end])).slice(0, mostForms);
  }
  return so;
}
