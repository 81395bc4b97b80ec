import type { About } from '../check.ts';
import { completenessCheck, outcomeSet, practice, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';
import { removesLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'nucleus.technique', by: [rcs, outcomeSet], name: 'the technique of the nucleus' },
  { path: 'hydrodissection', by: [practice], grade: 'info', name: 'the hydrodissection' },
  { path: 'cortex.method', by: [rcs], grade: 'warning', name: 'how the cortex was removed' },
];

export const lensRemovalIncomplete = completenessCheck({
  id: 'lens-removal-incomplete',
  title: 'Removal of the lens',
  summary: 'The note does not say how nucleus or cortex was removed.',
  due: removesLens,
  wanted,
});

export const aboutLensRemovalIncomplete: About = () => ({
  why: 'That is the operation itself.',
  whatToDo: 'Write the technique of the nucleus and how the cortex was removed, or “not done”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: nucleus.technique' },
  sound: { note: 'nucleus:\n  technique: horizontal chop' },
});
