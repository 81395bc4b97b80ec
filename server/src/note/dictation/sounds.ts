/**
 * The sound of English words, roughly: consonants only, those that a recogniser confuses folded together, silent
 * letters and word boundaries dropped. "see few rocks eem" and "cefuroxime" have the same sound.
 */
const folds: readonly (readonly [RegExp, string])[] = [
  [/\b(?:kn|gn|pn)/gu, 'n'],
  [/\bwr/gu, 'r'],
  [/\bps/gu, 's'],
  [/\bx/gu, 's'],
  [/ph/gu, 'f'],
  [/igh/gu, 'i'],
  [/(?:aught|ought)/gu, 'ot'],
  [/gh/gu, ''],
  [/tch|ch(?=[lr])|sch/gu, 'k'],
  [/(?:ti|si|ci)(?=on|an|al|en)/gu, 's'],
  [/sc(?=[eiy])/gu, 's'],
  [/c(?=[eiy])/gu, 's'],
  [/ck|qu|q|c/gu, 'k'],
  [/x/gu, 'ks'],
  [/sh|z/gu, 's'],
  [/g(?=[eiy])|j/gu, 's'],
  [/th|d/gu, 't'],
  [/b/gu, 'p'],
  [/v/gu, 'f'],
  [/g/gu, 'k'],
  [/[aeiouyhw]/gu, ''],
];

/** Sounds of words that were met before. */
const known = new Map<string, string>();
const mostKnown = 5000;

function soundOfWord(word: string): string {
  const before = known.get(word);
  if (before !== undefined) return before;
  let text = word.replace(/[^a-z]/gu, '');
  for (const [from, to] of folds) text = text.replace(from, to);
  if (known.size < mostKnown) known.set(word, text);
  return text;
}

/** The sound of some words: a string of consonants, begun with a mark when the words begin with a vowel. */
export function soundOf(words: readonly string[]): string {
  const first = /^[aeiou]/u.test(words[0] ?? '') ? '-' : '';
  return (
    first +
    words
      .map(soundOfWord)
      .join('')
      .replace(/(.)\1+/gu, '$1')
  );
}
