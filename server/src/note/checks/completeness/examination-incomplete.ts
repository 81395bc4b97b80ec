import type { About } from '../check.ts';
import { completenessCheck, outcomeSet, practice, registry, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'preop.acuity', by: [outcomeSet, registry], grade: 'warning', name: 'the acuity' },
  { path: 'preop.refraction', by: [practice], grade: 'info', name: 'the refraction' },
  { path: 'preop.pressure', by: [practice], grade: 'info', name: 'the pressure' },
  { path: 'preop.pupil', by: [practice], grade: 'info', name: 'the dilated pupil' },
  { path: 'preop.fundus', by: [practice], grade: 'warning', name: 'the fundus (or “not done”)' },
];

export const examinationIncomplete = completenessCheck({
  id: 'examination-incomplete',
  section: 'preop',
  title: 'Examination before the operation',
  summary: 'Acuity, refraction, pressure or fundus before the operation are missing.',
  planned: true,
  wanted,
});

export const aboutExaminationIncomplete: About = () => ({
  why: 'Without the state before nobody can say what the operation achieved, or what was there already.',
  whatToDo: 'Copy them from the clinic letter; write “not done” where a part was not examined.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: preop.acuity' },
  sound: { note: 'preop:\n  acuity:\n    corrected: 6/18' },
});
