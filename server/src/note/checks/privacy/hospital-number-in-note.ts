import type { About } from '../check.ts';
import { privacyCheck, takeItOut } from '../support/private-text.ts';

export const hospitalNumberInNote = privacyCheck({
  id: 'hospital-number-in-note',
  what: 'a hospital number',
  wording: {
    hints: ['mrn', 'hosp', 'unit no', 'unit num', 'case', 'medical', 'patient'],
    pattern:
      /\b(?:MRN|hosp(?:ital)?\.? ?(?:no|nr|number)|unit (?:no|number)|case ?notes?(?: no| number)?|medical record(?: no| number)?|patient (?:no|number|id))\b\.?\s*[:#]?\s*[A-Z]{0,3}\d{4,}/giu,
  },

  summary: 'The text holds a hospital number.',
});

export const aboutHospitalNumberInNote: About = () => ({
  why: 'Inside the hospital it names the person as well as the name does.',
  whatToDo: takeItOut,
  source: '45 CFR 164.514(b)(2) (identifiers to be removed) (medical record numbers)',
  since: '1.0',
  faulty: { note: 'free-text: MRN 4471902' },
  sound: { note: 'free-text: see the letter of March' },
});
