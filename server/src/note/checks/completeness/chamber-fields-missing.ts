import type { About } from '../check.ts';
import { completenessCheck, practice, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';
import { removesLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'ovd', by: [practice], grade: 'warning', name: 'the viscoelastic (“ovd”)' },
  { path: 'dye', by: [practice], grade: 'info', name: 'the dye (or “none”)' },
  { path: 'pupil-aid', by: [rcs], grade: 'info', name: 'the pupil aid (or “none”)' },
];

export const chamberFieldsMissing = completenessCheck({
  id: 'chamber-fields-missing',
  title: 'Viscoelastic, dye and pupil',
  summary: 'Viscoelastic, dye or pupil aid is neither recorded nor said to be none.',
  due: removesLens,
  wanted,
});

export const aboutChamberFieldsMissing: About = () => ({
  why: 'They explain pressure, staining and pupil afterwards; “none” costs one word.',
  whatToDo: 'Record them, or write “none”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: ovd' },
  sound: { note: 'ovd:\n  - kind: dispersive' },
});
