import { cms, completenessCheck, rcs, registry } from '../support/completeness.ts';

export const anaesthesiaIncomplete = completenessCheck({
  id: 'anaesthesia-incomplete',
  section: 'anaesthesia',
  title: 'Anaesthesia',
  summary: 'The anaesthesia, or who was responsible for it, is missing.',
  why: 'Kind and responsibility belong to every operative report.',
  whatToDo: 'Write the kind, and the anaesthetist or “none”.',
  wanted: [
    { path: 'anaesthesia.kinds', by: [cms, registry], name: 'the kind of anaesthesia' },
    { path: 'anaesthesia.anaesthetist', by: [rcs], grade: 'warning', name: 'the anaesthetist (or “none”)' },
  ],
  faulty: { note: 'without: anaesthesia.anaesthetist' },
  sound: { note: 'anaesthesia:\n  anaesthetist: none' },
});
