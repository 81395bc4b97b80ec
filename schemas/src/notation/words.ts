import { nearest } from './near-miss.ts';
import { bad, good, type Notation, type Word } from './notation.ts';

/** A term, or a term with its synonyms and meaning. */
export type Term<W extends string> = W | readonly [W, readonly string[], string?];

/** A vocabulary: the trade's own terms, each with the synonyms that are understood. */
export interface Vocabulary<W extends string> extends Notation<W> {
  readonly words: readonly (Word & { readonly word: W })[];
}

/** Builds a vocabulary. Case and repeated blanks do not count; a synonym is read as its term. */
export function vocabulary<const W extends string>(name: string, terms: readonly Term<W>[]): Vocabulary<W> {
  const words = terms.map((term) => toWord(term));
  const byText = new Map<string, W>();
  for (const { word, synonyms } of words) for (const text of [word, ...synonyms]) byText.set(fold(text), word);
  const candidates = [...byText.keys()];
  const list = words.map(({ word }) => word);
  const expected = `one of: ${list.join(', ')}`;
  return {
    name,
    expected,
    bareNumber: list.some((word) => /^\d+$/u.test(word)),
    words,
    examples: list.slice(0, 1),
    read: (text) => {
      const word = byText.get(fold(text));
      if (word !== undefined) return good(word);
      const near = nearest(fold(text), candidates);
      const suggestion = near === undefined ? holding(fold(text), byText) : byText.get(near);
      const hint = suggestion === undefined ? `Expected ${shortList(list)}.` : `Did you mean “${suggestion}”?`;
      return bad('unknown-word', `“${text}” is not a known ${name}. ${hint}`, suggestion);
    },
    write: (text) => byText.get(fold(text)) ?? text,
  };
}

/** The only term that has all the words of a text, as “cystoid macular oedema” has those of “macular oedema”. */
function holding<W extends string>(text: string, terms: ReadonlyMap<string, W>): W | undefined {
  const words = text.split(' ');
  const found = new Set<W>();
  for (const [term, word] of terms) {
    const own = new Set(term.split(/[ ,]+/u));
    if (words.every((one) => own.has(one))) found.add(word);
  }
  const [only] = found;
  return found.size === 1 ? only : undefined;
}

function toWord<W extends string>(term: Term<W>): Word & { readonly word: W } {
  if (typeof term === 'string') return { word: term, synonyms: [] };
  const [word, synonyms, meaning] = term;
  return meaning === undefined ? { word, synonyms } : { word, synonyms, meaning };
}

function fold(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/gu, ' ').replace(/’/gu, "'");
}

const SHOWN = 12;

function shortList(list: readonly string[]): string {
  const shown = list.slice(0, SHOWN).join(', ');
  return list.length > SHOWN ? `one of ${list.length} terms, such as ${shown}` : `one of: ${shown}`;
}
