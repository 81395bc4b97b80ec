import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const birthDateInNote = privacyCheck({
  id: 'birth-date-in-note',
  what: 'a date of birth',
  wording: {
    hints: ['dob', 'd.o.b', 'birth', 'born'],
    pattern:
      /\b(?:d\.?o\.?b\.?|date of birth|born(?: on)?)\b[^\n]{0,8}?\d{1,4}[-/. ](?:\d{1,2}|[A-Za-z]{3,9})[-/. ]\d{2,4}/giu,
  },

  summary: 'The text holds a full date of birth.',
});

export const aboutBirthDateInNote: About = () => ({
  why: 'With sex and place, the date of birth names one person in a town; the year is enough for the age.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed)',
  since: '1.0',
  faulty: { note: 'free-text: DOB 12/03/1958, seen in clinic' },
  sound: { note: 'free-text: seen in clinic in March' },
});
