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

const spelled = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A whole number of things, in digits or, up to ten, in words. */
export const count: Notation<number> = {
  name: 'count',
  expected: 'a whole number such as 2',
  bareNumber: true,
  pattern: String.raw`^(?:\d+|${spelled.join('|')})$`,
  examples: ['2'],
  read: (text) => {
    const folded = text.trim().toLowerCase();
    const word = spelled.indexOf(folded);
    if (word >= 0) return good(word + 1);
    return /^\d{1,6}$/u.test(folded)
      ? good(Number(folded))
      : bad('unreadable-value', `“${text}” is not a whole number. Expected a whole number such as 2.`);
  },
};

const piece = /^(?:single|(?<number>\w+))(?:[- ]?piece)?$/u;

/** How many pieces a lens is made of: 3, three, three-piece. */
export const pieces: Notation<number> = {
  ...count,
  pattern: String.raw`^(?:single|\w+)(?:[- ]?piece)?$`,
  read: (text) => {
    const said = piece.exec(text.trim().toLowerCase());
    const reading = said === null ? undefined : count.read(said.groups?.['number'] ?? '1');
    return reading?.ok === true ? reading : count.read(text);
  },
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
