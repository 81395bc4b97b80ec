import { bad, good, type Notation } from './notation.ts';

/** Free prose. */
export const prose: Notation<string> = {
  name: 'text',
  expected: 'a text',
  bareNumber: true,
  examples: [],
  read: good,
};

/** An identifier: kept exactly as typed, so that 007 stays 007. */
export const identifier: Notation<string> = {
  name: 'identifier',
  expected: 'an identifier without blanks at its ends',
  bareNumber: true,
  examples: ['OP-0417'],
  read: (text) => (text.trim() === '' ? bad('unreadable-value', 'An identifier cannot be blank.') : good(text)),
};

/** A whole number of things. */
export const count: Notation<number> = {
  name: 'count',
  expected: 'a whole number such as 2',
  bareNumber: true,
  pattern: String.raw`^\d+$`,
  examples: ['2'],
  read: (text) =>
    /^\d{1,6}$/u.test(text.trim())
      ? good(Number(text))
      : bad('unreadable-value', `“${text}” is not a whole number. Expected a whole number such as 2.`),
};

/** Yes or no. */
export const yesNo: Notation<boolean> = {
  name: 'yes or no',
  expected: 'yes or no',
  bareNumber: false,
  words: [
    { word: 'yes', synonyms: ['true'] },
    { word: 'no', synonyms: ['false'] },
  ],
  examples: ['yes'],
  read: (text) => {
    const folded = text.trim().toLowerCase();
    if (folded === 'yes' || folded === 'true') return good(true);
    if (folded === 'no' || folded === 'false') return good(false);
    return bad('unreadable-value', `“${text}” is neither yes nor no.`);
  },
  write: (text) => ({ true: 'yes', false: 'no' })[text.trim().toLowerCase()] ?? text.trim().toLowerCase(),
};
