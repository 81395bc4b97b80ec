import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

/** Spaced like a health number it has to pass its check digit: many telephone numbers look alike. */
function isNational(text: string): boolean {
  if (/NHS/u.test(text) || /^\d{3}-\d{2}-\d{4}$/u.test(text)) return true;
  const digits = Array.from(text.replace(/\D/gu, ''), Number);
  if (new Set(digits).size === 1) return false;
  const sum = digits.slice(0, 9).reduce((total, digit, i) => total + digit * (10 - i), 0);
  const check = (11 - (sum % 11)) % 11;
  return check !== 10 && check === digits[9];
}

export const nationalNumberInNote = privacyCheck({
  id: 'national-number-in-note',
  what: 'a national health or security number',
  wording: {
    hints: /\bnhs\b|\d{3}[ -]\d{2,3}[ -]\d{4}/u,
    pattern:
      /\bNHS\b[^\n\d]{0,12}\d{3} ?\d{3} ?\d{4}\b|(?<![\d-])\d{3}[ -]\d{3}[ -]\d{4}(?![\d-])|(?<![\d-])\d{3}-\d{2}-\d{4}(?![\d-])/gu,
  },
  isMeant: ([number]) => isNational(number),
  summary: 'The text holds a national health or security number.',
});

export const aboutNationalNumberInNote: About = () => ({
  why: 'Such a number is the person: it opens every other record.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed); NHS number check digit (modulus 11)',
  since: '1.0',
  faulty: { note: 'free-text: NHS 943 476 5919' },
  sound: { note: 'free-text: number in the local register' },
});
