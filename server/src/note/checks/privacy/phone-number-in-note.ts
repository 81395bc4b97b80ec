import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const phoneNumberInNote = privacyCheck({
  id: 'phone-number-in-note',
  what: 'a telephone number',
  wording: {
    hints: /\b(?:tel|phone|mobile)|[+(]\d|(?<!\d)0\d{2,4}[ -]\d/u,
    pattern:
      /\b(?:tel|phone|mobile|telephone)\b\.?:?\s*\+?\d[\d ()-]{6,}\d|\+\d{1,3}[ -]\(?\d{1,5}\)?[ -]?\d{3,4}[ -]?\d{3,4}\b|(?<![\d-])0\d{2,4}[ -]\d{3,4}[ -]?\d{3,4}(?![\d-])|\(\d{3}\) ?\d{3}-\d{4}/giu,
  },

  summary: 'The text holds a telephone number.',
});

export const aboutPhoneNumberInNote: About = () => ({
  why: 'It leads straight to the person or the family.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed)',
  since: '1.0',
  faulty: { note: 'after-care:\n  instructions: daughter to be rung on 01632 960 983' },
  sound: { note: 'after-care:\n  instructions: daughter to be rung in the evening' },
});
