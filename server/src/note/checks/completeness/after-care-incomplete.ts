import { completenessCheck, rcs } from '../support/completeness.ts';

export const afterCareIncomplete = completenessCheck({
  id: 'after-care-incomplete',
  title: 'After-care',
  summary: 'Drops, instructions or reviews after the operation are missing.',
  why: 'The ward and the patient act on this part of the note.',
  whatToDo: 'Write drops and instructions, and each review with when it is due; “none” where there is none.',
  wanted: [
    { path: 'after-care.drops', by: [rcs], name: 'the drops (or “none”)' },
    { path: 'after-care.instructions', by: [rcs], grade: 'warning', name: 'the instructions' },
    { path: 'reviews', by: [rcs], name: 'the reviews (or “none”)' },
  ],
  faulty: { note: 'without: reviews' },
  sound: { note: 'reviews:\n  - what: refraction\n    due: 4 weeks' },
});
