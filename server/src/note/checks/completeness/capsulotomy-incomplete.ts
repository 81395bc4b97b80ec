import type { About } from '../check.ts';
import { completenessCheck, practice, sourcesOf, type Wanted } from '../support/completeness.ts';
import { removesLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'capsulotomy.technique', by: [practice], grade: 'warning', name: 'the technique' },
  { path: 'capsulotomy.diameter', by: [practice], grade: 'warning', name: 'the diameter' },
  { path: 'capsulotomy.outcome', by: [practice], grade: 'warning', name: 'whether it was completed' },
];

export const capsulotomyIncomplete = completenessCheck({
  id: 'capsulotomy-incomplete',
  section: 'capsulotomy',
  title: 'Capsulotomy',
  summary: 'Technique, diameter or outcome of the capsulotomy is missing.',
  due: removesLens,
  wanted,
});

export const aboutCapsulotomyIncomplete: About = () => ({
  why: 'Whether the capsule rim is continuous decides every later choice of lens in this eye.',
  whatToDo: 'Write technique, diameter and outcome, or “not done”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: capsulotomy.outcome' },
  sound: { note: 'capsulotomy:\n  outcome: complete' },
});
