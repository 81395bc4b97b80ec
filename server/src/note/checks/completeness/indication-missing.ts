import { cms, completenessCheck, rcs } from '../support/completeness.ts';

export const indicationMissing = completenessCheck({
  id: 'indication-missing',
  title: 'Indication',
  summary: 'The note does not say why the operation was done.',
  why: 'What the patient could not do is the reason for the operation, and what its success is measured by.',
  whatToDo: 'Write what the patient could not do, in a few words.',
  planned: true,
  wanted: [{ path: 'indication', by: [rcs, cms], grade: 'warning', name: 'the reason for the operation' }],
  faulty: { note: 'without: indication' },
  sound: { note: 'indication: glare when driving at night' },
});
