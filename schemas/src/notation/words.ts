import { likelyTerm } from './likely-term.ts';
import { bad, good, type Notation, type Word } from './notation.ts';

/** A term, or a term with its synonyms and meaning. */
export type Term<W extends string> = W | readonly [W, readonly string[], string?];

/** A vocabulary: the trade's own terms, each with the synonyms that are understood. */
export interface Vocabulary<W extends string> extends Notation<W> {
  readonly words: readonly (Word & { readonly word: W })[];
}

/** Builds a vocabulary. Case, blanks and hyphens between words do not count; a synonym is read as its term. */
export function vocabulary<const W extends string>(name: string, terms: readonly Term<W>[]): Vocabulary<W> {
  const words = terms.map((term) => toWord(term));
  const byText = new Map<string, W>();
  for (const { word, synonyms } of words) for (const text of [word, ...synonyms]) byText.set(fold(text), word);
  const list = words.map(({ word }) => word);
  const expected = shortList(list, []);
  return {
    name,
    expected,
    bareNumber: list.some((word) => /^\d+$/u.test(word)),
    words,
    examples: list.slice(0, 1),
    read: (text) => {
      const word = byText.get(fold(text));
      if (word !== undefined) return good(word);
      const suggestion = likelyTerm(text, byText);
      const hint =
        suggestion === undefined ? `Expected ${shortList(list, alike(text, words))}.` : `Did you mean “${suggestion}”?`;
      return bad('unknown-word', `“${text}” is not a known ${name}. ${hint}`, suggestion);
    },
    write: (text) => byText.get(fold(text)) ?? text,
  };
}

/**
 * What is understood and has a word of the text, one for each term, those with most of its words first: to choose
 * from, not to be taken for what was meant.
 */
function alike(text: string, words: readonly Word[]): readonly string[] {
  const sought = new Set(wordsIn(text));
  const found: { readonly text: string; readonly shared: number }[] = [];
  for (const { word, synonyms } of words) {
    let best = { text: word, shared: 0 };
    for (const known of [word, ...synonyms]) {
      const shared = wordsIn(known).filter((one) => sought.has(one)).length;
      if (shared > best.shared) best = { text: known, shared };
    }
    if (best.shared > 0) found.push(best);
  }
  return found.toSorted((a, b) => b.shared - a.shared).map((one) => one.text);
}

/** The words of a text that mean something by themselves. */
function wordsIn(text: string): readonly string[] {
  return fold(text)
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 3 && word !== 'with' && word !== 'without');
}

function toWord<W extends string>(term: Term<W>): Word & { readonly word: W } {
  if (typeof term === 'string') return { word: term, synonyms: [] };
  const [word, synonyms, meaning] = term;
  return meaning === undefined ? { word, synonyms } : { word, synonyms, meaning };
}

function fold(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/’/gu, "'")
    .replace(/[\u2010\u2011\u2013]/gu, '-')
    .replace(/(?<=\p{L})-(?=\p{L})/gu, ' ')
    .replace(/\s*\/\s*/gu, '/')
    .replace(/\s*([+&])\s*/gu, ' $1 ')
    .replace(/\s+/gu, ' ');
}

const SHOWN = 12;
const SHOWN_ALIKE = 6;

function shortList(list: readonly string[], alikeFirst: readonly string[]): string {
  if (list.length <= SHOWN) return `one of: ${list.join(', ')}`;
  return alikeFirst.length > 0
    ? `one of ${list.length} terms; with a word in common: ${alikeFirst.slice(0, SHOWN_ALIKE).join(', ')}`
    : `one of ${list.length} terms, such as ${list.slice(0, SHOWN).join(', ')}`;
}
