import type { About } from '../check.ts';
import { completenessCheck, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'antisepsis.agent', by: [rcs], grade: 'warning', name: 'the antiseptic' },
  { path: 'antisepsis.strength', by: [rcs], grade: 'warning', name: 'its strength' },
];

export const antisepsisMissing = completenessCheck({
  id: 'antisepsis-missing',
  section: 'antisepsis',
  title: 'Antisepsis',
  summary: 'The antiseptic is not recorded.',
  wanted,
});

export const aboutAntisepsisMissing: About = () => ({
  why: 'It is the measure against infection that matters most, and the first question after an endophthalmitis.',
  whatToDo: 'Write agent and strength, and how long it stayed.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: antisepsis' },
  sound: { note: 'antisepsis:\n  agent: povidone-iodine\n  strength: 5 %' },
});
