import type { About } from '../check.ts';
import { completenessCheck, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'after-care.drops', by: [rcs], name: 'the drops (or “none”)' },
  { path: 'after-care.instructions', by: [rcs], grade: 'warning', name: 'the instructions' },
  { path: 'reviews', by: [rcs], name: 'the reviews (or “none”)' },
];

export const afterCareIncomplete = completenessCheck({
  id: 'after-care-incomplete',
  title: 'After-care',
  summary: 'Drops, instructions or reviews after the operation are missing.',
  wanted,
});

export const aboutAfterCareIncomplete: About = () => ({
  why: 'The ward and the patient act on this part of the note.',
  whatToDo: 'Write drops and instructions, and each review with when it is due; “none” where there is none.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: reviews' },
  sound: { note: 'reviews:\n  - what: refraction\n    due: 4 weeks' },
});
