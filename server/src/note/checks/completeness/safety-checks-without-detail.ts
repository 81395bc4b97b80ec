import type { About } from '../check.ts';
import { completenessCheck, who, type Wanted, sourcesOf } from '../support/completeness.ts';

const pauses = [
  ['sign-in', 'sign-in'],
  ['time-out', 'time-out'],
  ['sign-out', 'sign-out'],
] as const;

const of = (within: string): Pick<Wanted, 'by' | 'grade' | 'within'> => ({ by: [who], grade: 'warning', within });

const wanted: readonly Wanted[] = [
  ...pauses.flatMap(([key, name]) => [
    { path: `safety.${key}.time`, name: `the time of the ${name}`, ...of(`safety.${key}`) },
    { path: `safety.${key}.by`, name: `who led the ${name}`, ...of(`safety.${key}`) },
  ]),
  { path: 'safety.lens-verified.by', name: 'who verified the lens', ...of('safety.lens-verified') },
  { path: 'safety.lens-verified.model', name: 'the model that was verified', ...of('safety.lens-verified') },
  { path: 'safety.lens-verified.power', name: 'the power that was verified', ...of('safety.lens-verified') },
  { path: 'safety.consent.eye', name: 'the side on the consent', ...of('safety.consent') },
  { path: 'safety.consent.confirmed', name: 'whether the patient confirmed the consent', ...of('safety.consent') },
];

export const safetyChecksWithoutDetail = completenessCheck({
  id: 'safety-checks-without-detail',
  section: 'safety',
  title: 'Safety checks',
  summary: 'A safety check is recorded without its time, its side or who led it.',
  wanted,
});

export const aboutSafetyChecksWithoutDetail: About = () => ({
  why: 'Time and name are what makes a tick into evidence.',
  whatToDo: 'Add what the message names.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: safety.time-out.by' },
  sound: { note: 'safety:\n  time-out:\n    by: S-02' },
});
