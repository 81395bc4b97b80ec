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
import { implantsLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'lens.maker', by: [rcs, cms], name: 'the maker' },
  { path: 'lens.model', by: [rcs, cms], name: 'the model' },
  { path: 'lens.power', by: [rcs, cms], name: 'the power' },
  { path: 'lens.placed', by: [nationalAudit], name: 'where it lies' },
  { path: 'lens.expiry', by: [rcs], grade: 'warning', name: 'the expiry' },
  { path: 'lens.optic-diameter', by: [practice], grade: 'info', name: 'the diameter of the optic' },
  {
    path: 'lens.ovd-removed-behind',
    by: [practice],
    grade: 'info',
    name: 'whether viscoelastic was removed behind it',
  },
  {
    path: 'lens.card-given',
    by: ['Regulation (EU) 2017/745, Art. 18'],
    grade: 'info',
    name: 'whether the implant card was given',
  },
];

export const lensIncomplete = completenessCheck({
  id: 'lens-incomplete',
  section: 'lens',
  title: 'Lens',
  summary: 'Maker, model, power, expiry or position of the lens is missing.',
  due: implantsLens,
  wanted,
});

export const aboutLensIncomplete: About = () => ({
  why: 'The lens stays in the eye for life: who reads the record must know what it is and where it lies.',
  whatToDo: 'Copy the label of the box; if the eye was left without a lens, write “placed: none”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: lens.placed' },
  sound: { note: 'lens:\n  placed: capsular bag' },
});
