import { completenessCheck, rcs } from '../support/completeness.ts';

export const antisepsisMissing = completenessCheck({
  id: 'antisepsis-missing',
  section: 'antisepsis',
  title: 'Antisepsis',
  summary: 'The antiseptic is not recorded.',
  why: 'It is the measure against infection that matters most, and the first question after an endophthalmitis.',
  whatToDo: 'Write agent and strength, and how long it stayed.',
  wanted: [
    { path: 'antisepsis.agent', by: [rcs], grade: 'warning', name: 'the antiseptic' },
    { path: 'antisepsis.strength', by: [rcs], grade: 'warning', name: 'its strength' },
  ],
  faulty: { note: 'without: antisepsis' },
  sound: { note: 'antisepsis:\n  agent: povidone-iodine\n  strength: 5 %' },
});
