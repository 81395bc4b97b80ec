import type { About } from '../check.ts';
import { completenessCheck, lensStandard, who, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'safety.consent', by: [who], name: 'the consent' },
  { path: 'safety.site-marked', by: [who], name: 'the marked side' },
  { path: 'safety.sign-in', by: [who], name: 'the sign-in' },
  { path: 'safety.time-out', by: [who], name: 'the time-out' },
  { path: 'safety.lens-verified', by: [lensStandard], name: 'the verification of the lens' },
  { path: 'safety.sign-out', by: [who], name: 'the sign-out' },
];

export const safetyChecksIncomplete = completenessCheck({
  id: 'safety-checks-incomplete',
  section: 'safety',
  title: 'Safety checks',
  summary: 'Consent, marking, one of the three pauses or the verification of the lens is missing.',
  wanted,
});

export const aboutSafetyChecksIncomplete: About = () => ({
  why: 'A pause that is not recorded was probably not held; “not done” is an answer, an empty place is none.',
  whatToDo: 'Record each with time and who led it, or write “not done”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: safety.time-out' },
  sound: { note: 'safety:\n  time-out:\n    time: 10:01\n    by: S-02' },
});
