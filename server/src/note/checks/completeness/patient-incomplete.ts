import { cms, completenessCheck, nationalAudit, practice, who } from '../support/completeness.ts';

export const patientIncomplete = completenessCheck({
  id: 'patient-incomplete',
  section: 'patient',
  title: 'Patient',
  summary: 'Reference, year of birth, sex, allergies or risk drugs of the patient are missing.',
  why: 'Allergies and drugs decide what is safe to give; age and sex belong to every risk model.',
  whatToDo: 'Fill them in; write “none” or “never” where there is nothing. No names, no full date of birth.',
  planned: true,
  wanted: [
    { path: 'patient.ref', by: [cms], name: 'the reference' },
    { path: 'patient.born', by: [nationalAudit], name: 'the year of birth' },
    { path: 'patient.sex', by: [nationalAudit], name: 'the sex' },
    { path: 'patient.allergies', by: [who], name: 'the allergies' },
    { path: 'patient.anticoagulant', by: [who, practice], grade: 'warning', name: 'whether an anticoagulant is taken' },
    { path: 'patient.alpha-blocker', by: [practice], grade: 'warning', name: 'whether an alpha-blocker is taken' },
  ],
  faulty: { note: 'without: patient.allergies' },
  sound: { note: 'patient:\n  allergies: none' },
});
