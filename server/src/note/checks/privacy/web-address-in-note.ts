import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const webAddressInNote = privacyCheck({
  id: 'web-address-in-note',
  what: 'a web or network address',
  wording: {
    hints: /:\/\/|www\.|\d\.\d{1,3}\.\d{1,3}\.\d/u,
    pattern: /\bhttps?:\/\/[^\s"]+|\bwww\.[^\s"]+|(?<![\d.])(?:\d{1,3}\.){3}\d{1,3}(?![\d.])/giu,
  },

  summary: 'The text holds a web or network address.',
});

export const aboutWebAddressInNote: About = () => ({
  why: 'A link can hold the number of a person, and a network address names a machine in the hospital.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed)',
  since: '1.0',
  faulty: { note: 'free-text: picture at https://example.org/p/4471902' },
  sound: { note: 'free-text: picture in the archive' },
});
