import type { About } from '../check.ts';
import { cms, completenessCheck, jointCommission, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'findings', by: [rcs, cms, jointCommission], name: 'the findings' },
  { path: 'specimens', by: [cms, jointCommission], name: 'the specimens (or “none”)' },
  { path: 'blood-loss', by: [rcs, jointCommission], grade: 'info', name: 'the blood loss' },
  { path: 'condition-at-end', by: [cms], grade: 'info', name: 'the condition at the end' },
];

export const findingsIncomplete = completenessCheck({
  id: 'findings-incomplete',
  title: 'Findings',
  summary: 'Findings, specimens, blood loss or the state at the end is missing.',
  wanted,
});

export const aboutFindingsIncomplete: About = () => ({
  why: 'Every rule on operative reports asks for findings and for tissue removed, also when there was none.',
  whatToDo: 'Write what was found in a sentence; “specimens: none”, “blood-loss: minimal”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: findings' },
  sound: { note: 'findings: hard nucleus, clean capsule' },
});
