import type { About } from '../check.ts';
import { cms, completenessCheck, jointCommission, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';
import { removesLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'diagnosis.cataract', by: [cms], name: 'the kind of cataract' },
  { path: 'diagnosis.post-operative', by: [cms, jointCommission], name: 'the diagnosis after the operation' },
  { path: 'diagnosis.grade', by: [rcs], grade: 'info', name: 'the grade' },
];

export const diagnosisIncomplete = completenessCheck({
  id: 'diagnosis-incomplete',
  section: 'diagnosis',
  title: 'Diagnosis',
  summary: 'The diagnosis before or after the operation is missing.',
  due: removesLens,
  wanted,
});

export const aboutDiagnosisIncomplete: About = () => ({
  why: 'An operation without a diagnosis has no reason, and the register asks for the diagnosis afterwards as well.',
  whatToDo: 'Write the kind of cataract, and afterwards the diagnosis at the end (usually pseudophakia).',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: diagnosis.post-operative' },
  sound: { note: 'diagnosis:\n  post-operative: [pseudophakia]' },
});
