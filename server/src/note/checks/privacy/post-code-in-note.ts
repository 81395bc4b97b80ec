import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const postCodeInNote = privacyCheck({
  id: 'post-code-in-note',
  what: 'a post code',
  wording: {
    hints: /\d [\da-z]{3}|\d-\d{4}/u,
    pattern: /(?<![A-Za-z0-9])[A-Z]{1,2}\d[A-Z\d]? \d[A-Z]{2}(?![A-Za-z0-9])|(?<![\d-])\d{5}-\d{4}(?![\d-])/gu,
  },

  summary: 'The text holds a post code.',
});

export const aboutPostCodeInNote: About = () => ({
  why: 'A post code is a few houses; with the year of birth it is one person.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed) (geography below state)',
  since: '1.0',
  faulty: { note: 'free-text: lives alone, ZZ99 3VZ' },
  sound: { note: 'free-text: lives alone' },
});
