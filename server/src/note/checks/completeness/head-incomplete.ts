import type { About } from '../check.ts';
import {
  cms,
  completenessCheck,
  nationalAudit,
  practice,
  rcs,
  sourcesOf,
  type Wanted,
} from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'opnote', by: [practice], grade: 'warning', name: 'the version of the format' },
  { path: 'id', by: [cms], name: 'the id of the note' },
  { path: 'date', by: [rcs, cms], name: 'the date' },
  { path: 'start', by: [rcs], name: 'the start' },
  { path: 'finish', by: [rcs], name: 'the finish' },
  { path: 'place', by: [cms], grade: 'warning', name: 'the place' },
  { path: 'urgency', by: [rcs], name: 'the urgency' },
  { path: 'procedure', by: [rcs, cms], name: 'the procedure' },
  { path: 'which-eye', by: [nationalAudit], grade: 'warning', name: 'whether it is the first or the second eye' },
];

export const headIncomplete = completenessCheck({
  id: 'head-incomplete',
  title: 'Head of the note',
  summary: 'The head does not say when, where or what kind of operation it was.',
  wanted,
});

export const aboutHeadIncomplete: About = () => ({
  why: 'Date, time, urgency and procedure are what every register counts and what a court asks first.',
  whatToDo: 'Fill in the fields at the top of the note.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: start, finish' },
  sound: { note: 'start: 10:05\nfinish: 10:26' },
});
