import type { About } from '../check.ts';
import { cms, completenessCheck, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'indication', by: [rcs, cms], grade: 'warning', name: 'the reason for the operation' },
];

export const indicationMissing = completenessCheck({
  id: 'indication-missing',
  title: 'Indication',
  summary: 'The note does not say why the operation was done.',
  planned: true,
  wanted,
});

export const aboutIndicationMissing: About = () => ({
  why: 'What the patient could not do is the reason for the operation, and what its success is measured by.',
  whatToDo: 'Write what the patient could not do, in a few words.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: indication' },
  sound: { note: 'indication: glare when driving at night' },
});
