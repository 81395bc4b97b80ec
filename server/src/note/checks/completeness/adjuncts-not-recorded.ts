import type { About } from '../check.ts';
import { completenessCheck, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';
import { removesLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'ring.used', by: [rcs], grade: 'warning', name: 'whether a tension ring was used' },
  { path: 'vitrectomy', by: [rcs], grade: 'warning', name: 'whether a vitrectomy was done' },
];

export const adjunctsNotRecorded = completenessCheck({
  id: 'adjuncts-not-recorded',
  title: 'Ring and vitrectomy',
  summary: 'The note says neither that a ring or a vitrectomy was needed nor that it was not.',
  due: removesLens,
  wanted,
});

export const aboutAdjunctsNotRecorded: About = () => ({
  why: 'Both are extra procedures that are coded and counted; silence is no answer.',
  whatToDo: 'Write “ring: used: no” and “vitrectomy: not done”, or record them.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: vitrectomy' },
  sound: { note: 'vitrectomy: not done' },
});
