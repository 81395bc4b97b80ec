import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const mailAddressInNote = privacyCheck({
  id: 'mail-address-in-note',
  what: 'a mail address',
  wording: { hints: ['@'], pattern: /[\p{L}\p{N}._%+-]+@[\p{L}\p{N}-]+(?:\.[\p{L}\p{N}-]+)*\.\p{L}{2,}/gu },

  summary: 'The text holds a mail address.',
});

export const aboutMailAddressInNote: About = () => ({
  why: 'It names the person and where to reach them.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed)',
  since: '1.0',
  faulty: { note: 'free-text: letter sent to j.elm@example.org' },
  sound: { note: 'free-text: letter sent to the family doctor' },
});
