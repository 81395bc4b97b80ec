import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const personNamed = privacyCheck({
  id: 'person-named',
  what: 'the name of a person',
  wording: {
    hints: ['mr', 'ms', 'miss', 'mx', 'dr', 'prof', 'sister', 'master'],
    pattern:
      /\b(?:Mr|Mrs|Ms|Miss|Mx|Dr|Prof|Professor|Sister|Master)\.?[ \t]+(?!(?:Right|Left)\b)\p{Lu}[\p{L}’\x27-]+/gu,
  },

  summary: 'The text names a person.',
});

export const aboutPersonNamed: About = () => ({
  why: 'A note is kept for decades and read by many; the reference is enough to find the person.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed); GDPR Art. 4(5)',
  since: '1.0',
  faulty: { note: 'findings: discussed with Mrs Elm, soft nucleus' },
  sound: { note: 'findings: discussed with the patient, soft nucleus' },
});
