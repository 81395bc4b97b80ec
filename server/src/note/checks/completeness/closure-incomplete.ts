import type { About } from '../check.ts';
import { completenessCheck, practice, rcs, sourcesOf, type Wanted } from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'closure.sutures', by: [rcs], name: 'the sutures (or “none”)' },
  { path: 'closure.hydration', by: [rcs], grade: 'warning', name: 'whether the wounds were hydrated' },
  { path: 'closure.leak-test', by: [practice], grade: 'warning', name: 'the leak test' },
];

export const closureIncomplete = completenessCheck({
  id: 'closure-incomplete',
  section: 'closure',
  title: 'Closure',
  summary: 'Sutures, hydration, leak test or pressure at the end is missing.',
  wanted,
});

export const aboutClosureIncomplete: About = () => ({
  why: 'A leaking or soft eye on the first day is judged by what was found at the end of the operation.',
  whatToDo: 'Write the sutures or “none”, and how the wounds were tested.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: closure.leak-test' },
  sound: { note: 'closure:\n  leak-test: not done' },
});
