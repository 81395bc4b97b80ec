import { completenessCheck, practice, rcs } from '../support/completeness.ts';
import { removesLens } from '../support/course.ts';

export const chamberFieldsMissing = completenessCheck({
  id: 'chamber-fields-missing',
  title: 'Viscoelastic, dye and pupil',
  summary: 'Viscoelastic, dye or pupil aid is neither recorded nor said to be none.',
  why: 'They explain pressure, staining and pupil afterwards; “none” costs one word.',
  whatToDo: 'Record them, or write “none”.',
  due: removesLens,
  wanted: [
    { path: 'ovd', by: [practice], grade: 'warning', name: 'the viscoelastic (“ovd”)' },
    { path: 'dye', by: [practice], grade: 'info', name: 'the dye (or “none”)' },
    { path: 'pupil-aid', by: [rcs], grade: 'info', name: 'the pupil aid (or “none”)' },
  ],
  faulty: { note: 'without: ovd' },
  sound: { note: 'ovd:\n  - kind: dispersive' },
});
