import type { About } from '../check.ts';
import {
  cms,
  completenessCheck,
  nationalAudit,
  practice,
  who,
  sourcesOf,
  type Wanted,
} from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'patient.ref', by: [cms], name: 'the reference' },
  { path: 'patient.born', by: [nationalAudit], name: 'the year of birth' },
  { path: 'patient.sex', by: [nationalAudit], name: 'the sex' },
  { path: 'patient.allergies', by: [who], name: 'the allergies' },
  { path: 'patient.anticoagulant', by: [who, practice], grade: 'warning', name: 'whether an anticoagulant is taken' },
  { path: 'patient.alpha-blocker', by: [practice], grade: 'warning', name: 'whether an alpha-blocker is taken' },
];

export const patientIncomplete = completenessCheck({
  id: 'patient-incomplete',
  section: 'patient',
  title: 'Patient',
  summary: 'Reference, year of birth, sex, allergies or risk drugs of the patient are missing.',
  planned: true,
  wanted,
});

export const aboutPatientIncomplete: About = () => ({
  why: 'Allergies and drugs decide what is safe to give; age and sex belong to every risk model.',
  whatToDo: 'Fill them in; write “none” or “never” where there is nothing. No names, no full date of birth.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: patient.allergies' },
  sound: { note: 'patient:\n  allergies: none' },
});
