import type { About } from '../check.ts';
import { cms, completenessCheck, rcs, registry, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'anaesthesia.kinds', by: [cms, registry], name: 'the kind of anaesthesia' },
  { path: 'anaesthesia.anaesthetist', by: [rcs], grade: 'warning', name: 'the anaesthetist (or “none”)' },
];

export const anaesthesiaIncomplete = completenessCheck({
  id: 'anaesthesia-incomplete',
  section: 'anaesthesia',
  title: 'Anaesthesia',
  summary: 'The anaesthesia, or who was responsible for it, is missing.',
  wanted,
});

export const aboutAnaesthesiaIncomplete: About = () => ({
  why: 'Kind and responsibility belong to every operative report.',
  whatToDo: 'Write the kind, and the anaesthetist or “none”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: anaesthesia.anaesthetist' },
  sound: { note: 'anaesthesia:\n  anaesthetist: none' },
});
